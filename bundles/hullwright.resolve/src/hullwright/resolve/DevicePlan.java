/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import hullwright.network.DeviceSettings;
import hullwright.network.FittedDevice;
import hullwright.network.Origin;
import hullwright.network.data.Message;
import hullwright.network.data.Passing;
import hullwright.network.data.Pgn;
import hullwright.network.data.Sending;
import hullwright.network.data.SentMessage;
import hullwright.network.data.Taking;
import hullwright.network.data.Turning;
import hullwright.network.part.DeviceModel;
import hullwright.network.power.SupplyLead;
import hullwright.spec.Device;
import hullwright.spec.OwnFeed;

/**
 * A device that some boat may have, and how the text sets it.
 *
 * @param usual the device as the series has it
 * @param set what the text sets, to be applied anew when a hull has another model
 */
record DevicePlan(FittedDevice usual, Settings set) {

	/** A data instance is a byte. */
	private static final int MOST_INSTANCES = 256;

	/**
	 * What the text sets of a device.
	 *
	 * @param deviceInstance its device instance
	 * @param instances its data instances
	 * @param feeds what feeds it apart from the network
	 * @param sends messages that it tells otherwise than its model says
	 * @param mutes messages that it does not tell
	 * @param takes whom it listens to
	 * @param turns what it turns; as its model does, if none
	 * @param passes what it passes; as its model does, if none
	 */
	record Settings(Optional<Integer> deviceInstance, List<Instances> instances, List<DeviceSettings.OwnFeed> feeds, List<Sending> sends,
			List<Message> mutes, List<Taking> takes, List<Turning> turns, List<Passing> passes) {
	}

	/** Data instances, of one message or of all that have one. */
	record Instances(List<Integer> numbers, Optional<Message> message) {
	}

	/** The plan of a device, or empty if the text does not say what it is. */
	static Optional<DevicePlan> of(Device device, Copying copying) {
		CatalogMessages messages = copying.parts().messages();
		Settings set = new Settings(Optional.ofNullable(device.getDeviceInstance()),
				device.getInstances().stream()
						.map(stated -> new Instances(List.copyOf(stated.getNumbers()), Optional.ofNullable(stated.getMessage()).map(messages::of)))
						.toList(),
				device.getFeeds().stream().map(feed -> feed(feed, copying)).toList(),
				device.getSends().stream().map(messages::sending).toList(),
				device.getMutes().stream().map(messages::of).toList(),
				device.getTakes().stream().map(taking -> new Taking(messages.use(taking.getUse()), copying.names().of(taking.getFrom()))).toList(),
				device.getTurns().stream().map(messages::turning).toList(),
				device.getPasses().stream().map(messages::passing).toList());
		String name = copying.names().of(device);
		Origin origin = copying.places().of(device, name);
		return copying.parts().device(device.getType()).map(model -> new DevicePlan(
				fitted(name, model, Copying.name(device.getPlace()), Copying.text(device.getLabel()), set, origin), set));
	}

	/** A device that the backbone runs through, of which the text sets nothing. */
	static DevicePlan inBackbone(String name, DeviceModel model, Optional<String> place, String label, Origin origin) {
		Settings none = new Settings(Optional.empty(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
		return new DevicePlan(fitted(name, model, place, label, none, origin), none);
	}

	private static DeviceSettings.OwnFeed feed(OwnFeed feed, Copying copying) {
		return new DeviceSettings.OwnFeed(copying.names().of(feed.getFrom()),
				Optional.ofNullable(feed.getLead()).map(lead -> new SupplyLead(lead.getLength(), lead.getSize())));
	}

	/** The same device as another model. */
	FittedDevice as(DeviceModel other) {
		return fitted(usual.name(), other, usual.place(), usual.label(), set, usual.origin());
	}

	private static FittedDevice fitted(String name, DeviceModel model, Optional<String> place, String label, Settings set, Origin origin) {
		DeviceSettings settings = new DeviceSettings(set.deviceInstance, set.feeds, set.takes,
				set.turns.isEmpty() ? model.data().turns() : set.turns, set.passes.isEmpty() ? model.data().passes() : set.passes);
		return new FittedDevice(name, model, place, label, settings, sends(model.data().sends(), set), origin);
	}

	private static List<SentMessage> sends(List<Sending> usual, Settings set) {
		List<SentMessage> sends = new ArrayList<>();
		List<Sending> others = new ArrayList<>(set.sends);
		for (Sending sending : usual) {
			Optional<Sending> other = others.stream().filter(each -> each.use().covers(sending.use())).findFirst();
			other.ifPresent(others::remove);
			if (!set.mutes.contains(sending.use().message())) {
				add(other.map(stated -> setOtherwise(sending, stated)).orElse(sending), set.instances, sends);
			}
		}
		others.forEach(sending -> add(sending, set.instances, sends));
		return sends;
	}

	/** What the boat says wins; what it leaves open stays as the model has it. */
	private static Sending setOtherwise(Sending usual, Sending stated) {
		return new Sending(stated.use().value().isPresent() ? stated.use() : usual.use(), stated.timing(),
				Math.max(usual.instances(), stated.instances()), usual.settable(), stated.instance().or(usual::instance),
				stated.port().or(usual::port));
	}

	private static void add(Sending sending, List<Instances> instances, List<SentMessage> sends) {
		boolean hasInstance = sending.use().message() instanceof Pgn pgn && pgn.instance();
		if (!hasInstance) {
			sends.add(new SentMessage(sending.use(), sending.timing(), Optional.empty(), sending.port()));
			return;
		}
		for (int number : numbers(sending, instances)) {
			sends.add(new SentMessage(sending.use(), sending.timing(), Optional.of(number), sending.port()));
		}
	}

	/** The instances that the boat sets for this message, else for all, else those of the model, from 0 if it leaves them open. */
	private static List<Integer> numbers(Sending sending, List<Instances> instances) {
		Optional<Instances> set = instances.stream().filter(each -> each.message.filter(sending.use().message()::equals).isPresent()).findFirst()
				.or(() -> instances.stream().filter(each -> each.message.isEmpty()).findFirst());
		int first = sending.instance().orElse(0);
		return set.map(Instances::numbers).orElseGet(() -> IntStream.range(first, first + Math.min(sending.instances(), MOST_INSTANCES)).boxed().toList());
	}
}
