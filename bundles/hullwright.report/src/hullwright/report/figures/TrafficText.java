/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.traffic.BusFigures;
import hullwright.analysis.traffic.BusLoad;
import hullwright.analysis.traffic.BusMessage;
import hullwright.analysis.traffic.LeftOut;
import hullwright.analysis.traffic.MessageResponse;
import hullwright.analysis.traffic.ResponseTime;
import hullwright.quantity.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The traffic of a network: how full the bus is, and which messages may come late.
 */
final class TrafficText {

	private final BusFigures figures;
	private final Wording wording;

	TrafficText(BusFigures figures, Wording wording) {
		this.figures = figures;
		this.wording = wording;
	}

	List<String> lines() {
		BusLoad load = figures.load();
		if (load.messages().isEmpty()) {
			return leftOut();
		}
		List<String> lines = new ArrayList<>();
		lines.add("Load: " + load.messages().size() + " messages, " + Wording.number(load.total().framesPerSecond(), 0) + " frames a second, "
				+ shares(Wording.perCent(load.total().typicalShareOf(load.bus())), Wording.perCent(load.total().worstShareOf(load.bus()))) + "; in the busiest second at most "
				+ Wording.perCent(load.busiestSecond().worstShare()) + ".");
		load.bursts().stream().findFirst().ifPresent(each -> lines.add("Longest burst: " + name(each.message()) + ", "
				+ each.message().packet().frames() + " frames, " + milliseconds(each.onTheWire()) + "."));
		lines.add("At power-up: " + figures.powerUp().addresses() + " addresses claimed in " + milliseconds(figures.powerUp().claims().busy())
				+ "; product information of all, if one asks, keeps the bus busy for "
				+ Wording.time(figures.powerUp().productInformation().busy()) + ".");
		lines.addAll(leftOut());
		return lines;
	}

	private static String shares(String usual, String worst) {
		return usual.equals(worst) ? worst + " of the bus" : "usually " + usual + " of the bus and at most " + worst;
	}

	private List<String> leftOut() {
		Map<LeftOut.Reason, List<LeftOut>> byReason = figures.traffic().leftOut().stream()
				.collect(Collectors.groupingBy(LeftOut::reason, TreeMap::new, Collectors.toList()));
		return byReason.entrySet().stream().map(each -> "Not counted, since " + word(each.getKey()) + ": " + some(each.getValue()) + ".").toList();
	}

	private String some(List<LeftOut> messages) {
		return wording.some(messages.stream().map(each -> each.pgn().number() + " from " + wording.name(each.sender(), figures.traffic().network()))
				.distinct().toList(), "");
	}

	private static String word(LeftOut.Reason reason) {
		return switch (reason) {
		case EVENT_WITHOUT_LEAST_INTERVAL -> "events send it and nothing says how often at most";
		case TIMING_UNSTATED -> "nothing says when it is sent";
		case FRAMING_UNSTATED -> "nothing says how it is framed";
		case LENGTH_UNSTATED -> "nothing says how long it is";
		case LENGTH_IMPOSSIBLE -> "its length cannot be";
		case INTERVAL_IMPOSSIBLE -> "its interval cannot be";
		case NUMBER_IMPOSSIBLE -> "no PGN has such a number";
		};
	}

	/** The messages with the least time to spare first; those without a bound before all. */
	TextTable table() {
		TextTable table = TextTable.worstFirst("Message", "From", ">Every", ">Frames", ">Takes at most", ">Spare");
		figures.responses().messages().stream().sorted(Comparator.comparing(TrafficText::usedUp).reversed()).forEach(each -> table.row(
				each.message().pgn().number() + each.message().value().map(value -> " as " + value.value()).orElse("")
						+ each.message().instance().map(number -> " instance " + number).orElse(""),
				wording.name(each.message().sender(), figures.traffic().network()), Wording.time(each.message().release().interval()),
				String.valueOf(each.message().packet().frames()), took(each), each.margin().map(TrafficText::milliseconds).orElse("-")));
		return table;
	}

	private static double usedUp(MessageResponse response) {
		return response.time() instanceof ResponseTime.Bounded bounded ? bounded.worst().dividedBy(response.message().release().interval())
				: Double.POSITIVE_INFINITY;
	}

	private static String took(MessageResponse response) {
		return response.time() instanceof ResponseTime.Bounded bounded ? milliseconds(bounded.worst()) : "no bound";
	}

	private String name(BusMessage message) {
		return message.pgn().number() + " from " + wording.name(message.sender(), figures.traffic().network());
	}

	private static String milliseconds(Duration duration) {
		return Wording.number(duration.seconds() * 1000, 1) + " ms";
	}
}
