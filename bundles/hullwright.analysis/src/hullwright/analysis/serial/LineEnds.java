/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

import hullwright.network.DevicePortRef;
import hullwright.network.SerialLine;
import hullwright.network.part.SerialPort;

/**
 * The ends of a serial line that are there and are ports for serial lines.
 *
 * @param talkers who talks
 * @param listeners who listens
 * @param problems what is wrong with its ends
 */
record LineEnds(List<LineEnd> talkers, List<LineEnd> listeners, List<SerialProblem> problems) {

	static LineEnds of(SerialLine line, DevicesOnBoard devices) {
		List<SerialProblem> problems = new ArrayList<>();
		List<LineEnd> talkers = ends(line.from(), devices, problems);
		List<LineEnd> listeners = ends(line.to(), devices, problems);
		if (line.from().isEmpty()) {
			problems.add(new SerialProblem.NoTalker());
		} else if (Set.copyOf(line.from()).size() > 1) {
			problems.add(new SerialProblem.SeveralTalkers(List.copyOf(new LinkedHashSet<>(line.from()))));
		}
		if (line.to().isEmpty()) {
			problems.add(new SerialProblem.NoListener());
		}
		talkers.stream().filter(each -> !each.serial().talker()).forEach(each -> problems.add(new SerialProblem.CannotTalk(each.port())));
		listeners.stream().filter(each -> !each.serial().listener() && talkers.stream().noneMatch(each::isSameAs)).forEach(each -> problems.add(new SerialProblem.CannotListen(each.port())));
		Set<String> talking = line.from().stream().map(DevicePortRef::device).collect(Collectors.toSet());
		line.to().stream().map(DevicePortRef::device).filter(talking::contains).distinct()
				.forEach(each -> problems.add(new SerialProblem.HearsItself(each)));
		return new LineEnds(talkers, listeners, problems);
	}

	private static List<LineEnd> ends(List<DevicePortRef> ports, DevicesOnBoard devices, List<SerialProblem> problems) {
		List<LineEnd> ends = new ArrayList<>();
		for (DevicePortRef port : new LinkedHashSet<>(ports)) {
			devices.end(port).ifPresentOrElse(ends::add, () -> problems.add(new SerialProblem.NoSerialPort(port)));
		}
		return ends;
	}

	/** All of them, each once. */
	List<LineEnd> all() {
		List<LineEnd> all = new ArrayList<>(talkers);
		listeners.stream().filter(each -> talkers.stream().noneMatch(each::isSameAs)).forEach(all::add);
		return all;
	}

	/** Those that somebody else on the line drives. */
	List<LineEnd> driven() {
		return listeners.stream().filter(each -> talkers.stream().anyMatch(talker -> !talker.isSameAs(each))).toList();
	}

	/** The talkers, each with what the line joins it to. */
	List<Joint> joints() {
		List<Joint> joints = new ArrayList<>();
		for (int i = 0; i < talkers.size(); i++) {
			LineEnd talker = talkers.get(i);
			for (LineEnd other : talkers.subList(i + 1, talkers.size())) {
				joints.add(new Joint(talker.port(), other.port(), LevelFit.OUTPUTS, currentPath(talker, other)));
			}
			for (LineEnd other : listeners) {
				if (other.isSameAs(talker)) {
					continue;
				}
				boolean outputs = other.serial().talker() && !other.serial().listener();
				joints.add(new Joint(talker.port(), other.port(),
						outputs ? LevelFit.OUTPUTS : LevelFit.of(talker.serial().level(), level(other)), currentPath(talker, other)));
			}
		}
		return joints;
	}

	private static boolean currentPath(LineEnd one, LineEnd other) {
		return !one.serial().isolated() && !other.serial().isolated();
	}

	/** Whether the level of a listener is taken from its being isolated. */
	static boolean isLevelAssumed(LineEnd listener) {
		return listener.serial().level() == SerialPort.Level.UNSTATED && listener.serial().isolated();
	}

	private static SerialPort.Level level(LineEnd listener) {
		return isLevelAssumed(listener) ? SerialPort.Level.DIFFERENTIAL : listener.serial().level();
	}
}
