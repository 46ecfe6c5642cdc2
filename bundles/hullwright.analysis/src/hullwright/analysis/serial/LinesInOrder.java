/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import hullwright.network.Boat;
import hullwright.network.DevicePortRef;
import hullwright.network.FittedDevice;
import hullwright.network.SerialLine;
import hullwright.quantity.Duration;

/**
 * The serial lines of a boat, those first that others are fed from: how late sentences are on one is how long they waited before the
 * others.
 */
final class LinesInOrder {

	private static final Optional<Duration> NOT_AT_ALL = Optional.of(new Duration(0));

	private final DevicesOnBoard devices;
	private final LinesAtPorts lines;
	private final Function<SerialLine, List<SentenceOnLine>> sentences;
	private final Map<SerialLine, SerialLineFigures> done = new IdentityHashMap<>();
	private final Set<String> begun = new HashSet<>();

	/**
	 * @param sentences gives what goes over each
	 */
	LinesInOrder(Boat boat, DevicesOnBoard devices, Function<SerialLine, List<SentenceOnLine>> sentences) {
		this.devices = devices;
		this.sentences = sentences;
		lines = LinesAtPorts.of(boat);
	}

	SerialLineFigures figures(SerialLine line) {
		if (!done.containsKey(line)) {
			begun.add(line.name());
			done.put(line, SerialLineFigures.of(line, devices, lines, SerialLoad.of(sentences.apply(line), told -> late(line, told))));
		}
		return done.get(line);
	}

	/** How late a sentence may be on a line: as long as it may have taken on the lines that its talker passes it on from. */
	private Optional<Duration> late(SerialLine line, SentenceOnLine told) {
		Optional<FittedDevice> talker = devices.named(told.talker());
		if (talker.isEmpty() || talker.get().settings().passes().isEmpty()) {
			return NOT_AT_ALL;
		}
		Optional<Duration> latest = NOT_AT_ALL;
		for (DevicePortRef output : line.from()) {
			for (String input : talker.get().model().lines().keySet()) {
				if (output.device().equals(told.talker()) && PassingRules.of(talker.get(), input, output.port()).pass(told)) {
					latest = later(latest, lateFrom(lines.into(new DevicePortRef(told.talker(), input)), told));
				}
			}
		}
		return latest;
	}

	private Optional<Duration> lateFrom(List<SerialLine> inputs, SentenceOnLine told) {
		Optional<Duration> latest = NOT_AT_ALL;
		for (SerialLine input : inputs) {
			if (sentences.apply(input).stream().anyMatch(each -> each.use().message().equals(told.use().message()))) {
				latest = later(latest, takenOn(input));
			}
		}
		return latest;
	}

	/** How long a sentence takes on a line at most; none if there is no bound, or the line is fed in a circle. */
	private Optional<Duration> takenOn(SerialLine line) {
		if (begun.contains(line.name()) && !done.containsKey(line)) {
			return Optional.empty();
		}
		return figures(line).waiting() instanceof Waiting.Bounded bounded ? Optional.of(bounded.longest()) : Optional.empty();
	}

	private static Optional<Duration> later(Optional<Duration> one, Optional<Duration> other) {
		return one.flatMap(each -> other.map(more -> more.exceeds(each) ? more : each));
	}
}
