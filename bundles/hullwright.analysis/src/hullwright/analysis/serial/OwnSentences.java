/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;

import hullwright.network.DevicePortRef;
import hullwright.network.FittedDevice;
import hullwright.network.SerialLine;
import hullwright.network.data.SentMessage;
import hullwright.network.data.Sending;
import hullwright.network.data.Sentence;
import hullwright.network.data.Timing;

/**
 * What the talkers of a line put on it of their own. What they pass on or turn is not among it, since only the flow of data over
 * the whole boat tells.
 */
final class OwnSentences {

	private OwnSentences() {
	}

	/**
	 * The sentences of a line. Where the text says what it carries, it is that: with the timing of the text; the text having said
	 * nothing but what is usual, with that of the talker if it tells the sentence.
	 */
	static List<SentenceOnLine> of(SerialLine line, DevicesOnBoard devices) {
		List<SentenceOnLine> told = new ArrayList<>();
		for (DevicePortRef end : new LinkedHashSet<>(line.from())) {
			devices.named(end.device()).ifPresent(device -> told.addAll(toldBy(device, end.port())));
		}
		if (line.carries().isEmpty()) {
			return told;
		}
		List<SentenceOnLine> carried = new ArrayList<>();
		for (Sending sending : line.carries()) {
			if (sending.use().message() instanceof Sentence) {
				carried.addAll(carried(sending, told, line));
			}
		}
		return carried;
	}

	/** The sentences that a device tells on one of its ports, one entry for each data instance. */
	static List<SentenceOnLine> toldBy(FittedDevice device, String port) {
		List<SentenceOnLine> told = new ArrayList<>();
		for (SentMessage sent : device.sends()) {
			if (sent.use().message() instanceof Sentence && sent.port().map(port::equals).orElse(true)) {
				told.add(new SentenceOnLine(device.name(), sent.use(), sent.timing()));
			}
		}
		return told;
	}

	private static List<SentenceOnLine> carried(Sending sending, List<SentenceOnLine> told, SerialLine line) {
		Timing usual = sending.use().message().timing();
		List<SentenceOnLine> found = told.stream().filter(each -> sending.use().covers(each.use()))
				.map(each -> new SentenceOnLine(each.talker(), each.use(), sending.timing().equals(usual) ? each.timing() : sending.timing()))
				.toList();
		if (!found.isEmpty() || line.from().isEmpty()) {
			return found;
		}
		SentenceOnLine one = new SentenceOnLine(line.from().get(0).device(), sending.use(), sending.timing());
		return Collections.nCopies(sending.instances(), one);
	}
}
