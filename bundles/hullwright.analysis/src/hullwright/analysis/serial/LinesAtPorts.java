/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import hullwright.network.Boat;
import hullwright.network.DevicePortRef;
import hullwright.network.SerialLine;

/**
 * Which serial lines meet at a port: what the text writes as several lines is one circuit there.
 */
final class LinesAtPorts {

	private final Map<DevicePortRef, List<SerialLine>> from = new HashMap<>();
	private final Map<DevicePortRef, List<SerialLine>> to = new HashMap<>();

	private LinesAtPorts() {
	}

	static LinesAtPorts of(Boat boat) {
		LinesAtPorts lines = new LinesAtPorts();
		for (SerialLine line : boat.serialLines()) {
			Set.copyOf(line.from()).forEach(port -> lines.from.computeIfAbsent(port, key -> new ArrayList<>()).add(line));
			Set.copyOf(line.to()).forEach(port -> lines.to.computeIfAbsent(port, key -> new ArrayList<>()).add(line));
		}
		return lines;
	}

	/** All ports that listen to a talker, by whichever line. */
	Set<DevicePortRef> listenersTo(LineEnd talker, SerialLine line) {
		Set<DevicePortRef> all = new LinkedHashSet<>(line.to());
		from.getOrDefault(talker.port(), List.of()).forEach(other -> all.addAll(other.to()));
		return all;
	}

	/** The lines that a port listens to. */
	List<SerialLine> into(DevicePortRef port) {
		return to.getOrDefault(port, List.of());
	}

	/** The outputs that already talk at another rate when this line comes to them, in the order of the text. */
	List<SerialProblem> talkingAtOtherRates(SerialLine line) {
		List<SerialProblem> problems = new ArrayList<>();
		for (DevicePortRef talker : new LinkedHashSet<>(line.from())) {
			List<String> others = from.getOrDefault(talker, List.of()).stream().takeWhile(each -> !each.name().equals(line.name()))
					.filter(each -> each.rate().isPresent() && line.rate().isPresent() && !each.rate().equals(line.rate())).map(SerialLine::name).toList();
			if (!others.isEmpty()) {
				problems.add(new SerialProblem.PortAtTwoRates(talker, others));
			}
		}
		return problems;
	}

	/** The inputs that already listen to others when this line comes to them, in the order of the text. */
	List<SerialProblem> talkedToByOthers(SerialLine line) {
		List<SerialProblem> problems = new ArrayList<>();
		for (DevicePortRef listener : new LinkedHashSet<>(line.to())) {
			List<String> others = to.getOrDefault(listener, List.of()).stream().takeWhile(each -> !each.name().equals(line.name()))
					.filter(each -> !line.from().containsAll(each.from()) && !each.from().containsAll(line.from())).map(SerialLine::name).toList();
			if (!others.isEmpty()) {
				problems.add(new SerialProblem.InputShared(listener, others));
			}
		}
		return problems;
	}
}
