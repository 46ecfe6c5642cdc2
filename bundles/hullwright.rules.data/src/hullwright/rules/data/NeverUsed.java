/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.DataSource;
import hullwright.network.FittedDevice;
import hullwright.network.data.Message;
import hullwright.network.data.MessageUse;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetProperty;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A device tells what nobody on board needs, shows or makes something of. Off unless a house switches it on: most devices tell more
 * than one boat uses, and that does no harm while the bus has room.
 */
public final class NeverUsed implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/never-used", "Data that nobody uses", Severity.ADVICE,
				"nobody on board needs or shows {messages}, which {device} tells",
				"common practice: mute what nobody uses where the bus is busy").offByDefault();
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		Map<String, List<MessageUse>> unused = boat.figures().data().unused().stream()
				.collect(Collectors.groupingBy(DataSource::device, LinkedHashMap::new, Collectors.mapping(DataSource::use, Collectors.toList())));
		return unused.entrySet().stream().map(each -> {
			Finding.Builder finding = boat.finding(onBoard.origin(each.getKey()));
			onBoard.device(each.getKey()).flatMap(device -> mute(device, each.getValue())).ifPresent(finding::fix);
			return finding
					.value("messages", InWords.messages(each.getValue()))
					.value("device", InWords.name(each.getKey()))
					.build();
		}).toList();
	}

	/** Mutes the messages, where none of them is used in another instance or for another key value. */
	private static Optional<Fix> mute(FittedDevice device, List<MessageUse> unused) {
		List<Message> messages = unused.stream().map(MessageUse::message).distinct().toList();
		boolean whole = device.sends().stream().filter(sent -> messages.contains(sent.use().message())).count() == unused.size();
		String names = messages.stream().map(Message::name).collect(Collectors.joining(" and "));
		return whole ? Optional.of(new Fix("Mute " + names, Fix.Reach.DESIGN, List.of(new SetProperty(device.origin(), "mutes " + names, "")))) : Optional.empty();
	}
}
