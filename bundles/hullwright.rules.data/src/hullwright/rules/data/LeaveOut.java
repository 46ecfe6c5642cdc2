/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.network.FittedDevice;
import hullwright.network.data.Message;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Passing;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetProperty;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Leaves messages out of what a bridge passes on, where the boat sets that in one statement and something is left to pass.
 */
final class LeaveOut {

	private LeaveOut() {
	}

	/** A fix for each of the bridges of these qualified names that can. */
	static List<Fix> oneOf(List<String> bridges, OnBoard onBoard, Collection<MessageUse> uses) {
		return bridges.stream().flatMap(each -> onBoard.device(each).stream()).flatMap(each -> of(each, uses).stream()).toList();
	}

	private static Optional<Fix> of(FittedDevice bridge, Collection<MessageUse> uses) {
		List<Passing> passes = bridge.settings().passes();
		if (!bridge.model().data().passesSettable() || passes.size() != 1 || passes.get(0).messages().isEmpty()) {
			return Optional.empty();
		}
		Passing passing = passes.get(0);
		List<Message> left = new ArrayList<>(passing.messages().get());
		List<Message> out = uses.stream().map(MessageUse::message).distinct().toList();
		if (!left.removeAll(out) || left.isEmpty()) {
			return Optional.empty();
		}
		String value = left.stream().map(Message::name).collect(Collectors.joining(" and ")) + passing.from().map(from -> " from " + from).orElse("")
				+ passing.to().map(to -> " to " + to).orElse("");
		return Optional.of(new Fix("Let " + bridge.origin().simpleName() + " leave out " + InWords.messages(uses), Fix.Reach.DESIGN,
				List.of(new SetProperty(bridge.origin(), "passes", value))));
	}
}
