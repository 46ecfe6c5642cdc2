/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.FittedDevice;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Showing;
import hullwright.network.data.Taking;
import hullwright.network.data.Timing;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Sorts what a device hears into data, and finds out whose it takes.
 */
final class Reception {

	private record Datum(MessageUse use, Optional<Integer> instance) {
	}

	private final Listening listening;
	private final StreamSources sources;
	private final StreamTimings timings;
	private final Map<Stream, Set<String>> onTheWay = new HashMap<>();

	Reception(Listening listening, StreamSources sources, StreamTimings timings) {
		this.timings = timings;
		this.listening = listening;
		this.sources = sources;
	}

	/** What a device shows. */
	ShownData shown(FittedDevice device, Showing showing) {
		List<ReceivedData> received = new ArrayList<>();
		List<MessageUse> missing = new ArrayList<>();
		for (MessageUse use : showing.uses()) {
			List<ReceivedData> data = received(device, listening.heard(device, use, showing.port()));
			received.addAll(data);
			if (data.isEmpty()) {
				missing.add(use);
			}
		}
		return new ShownData(device.name(), showing, received, missing);
	}

	/** What is heard, datum by datum. */
	List<ReceivedData> received(FittedDevice device, List<Stream> heard) {
		Map<Datum, List<Stream>> data = new LinkedHashMap<>();
		for (Stream each : heard) {
			data.computeIfAbsent(new Datum(each.use, each.instance), none -> new ArrayList<>(2)).add(each);
		}
		List<ReceivedData> received = new ArrayList<>();
		data.forEach((datum, streams) -> one(device, datum, streams).ifPresent(received::add));
		return received;
	}

	private Optional<ReceivedData> one(FittedDevice device, Datum datum, List<Stream> streams) {
		Set<String> tellers = new LinkedHashSet<>();
		Set<DataSource> begun = new LinkedHashSet<>();
		Set<Set<DataSource>> different = new LinkedHashSet<>();
		for (Stream each : streams) {
			List<DataSource> of = sources.of(each);
			if (of.stream().anyMatch(source -> !source.device().equals(device.name()))) {
				tellers.add(each.teller());
				begun.addAll(of);
				different.add(Set.copyOf(of));
			}
		}
		if (tellers.isEmpty()) {
			return Optional.empty();
		}
		Optional<Taking> set = set(device, datum.use);
		ReceivedData.Choice choice = set.isPresent() ? ReceivedData.Choice.SET
				: different.size() == 1 ? ReceivedData.Choice.NO_OTHER
				: isChosenByUser(device, datum.use) ? ReceivedData.Choice.BY_USER : ReceivedData.Choice.NOT_TOLD;
		Optional<String> taken = switch (choice) {
		case SET -> streams.stream().filter(each -> isFrom(each, set.get().device())).map(Stream::teller).findFirst();
		case NO_OTHER -> tellers.stream().findFirst();
		case BY_USER, NOT_TOLD -> Optional.empty();
		};
		return Optional.of(new ReceivedData(datum.use, datum.instance, timings.mostOften(streams).orElse(Timing.UNSTATED), List.copyOf(tellers), List.copyOf(begun),
				choice, taken));
	}

	/** Whom a device is set to listen to for what is told so. */
	static Optional<Taking> set(FittedDevice device, MessageUse told) {
		return device.settings().takes().stream().filter(each -> each.use().covers(told)).findFirst();
	}

	/** Whether a device may take a stream: it is set to listen to nobody else for it. */
	boolean mayTake(FittedDevice device, Stream stream) {
		return set(device, stream.use).map(taking -> isFrom(stream, taking.device())).orElse(true);
	}

	/** Whether a stream comes from a device: it begins there, or the device passes it on or turns it, as what is listened to then. */
	boolean isFrom(Stream stream, String device) {
		return onTheWay.computeIfAbsent(stream, Reception::tellersBehind).contains(device);
	}

	private static Set<String> tellersBehind(Stream stream) {
		Set<String> tellers = new LinkedHashSet<>();
		Set<Stream> seen = new LinkedHashSet<>(Set.of(stream));
		List<Stream> open = new ArrayList<>(seen);
		while (!open.isEmpty()) {
			Stream next = open.remove(open.size() - 1);
			tellers.add(next.teller());
			next.inputs.forEach(alternatives -> alternatives.stream().filter(seen::add).forEach(open::add));
		}
		return tellers;
	}

	private static boolean isChosenByUser(FittedDevice device, MessageUse use) {
		return device.model().data().shows().stream().anyMatch(each -> each.sourceSelectable() && each.uses().stream().anyMatch(one -> one.covers(use)));
	}
}
