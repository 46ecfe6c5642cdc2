/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.chart;

import hullwright.analysis.Figures;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.power.SpanReading;
import hullwright.analysis.serial.LineUse;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.traffic.BusFigures;
import hullwright.analysis.traffic.BusLoad;
import hullwright.analysis.traffic.MessageResponse;
import hullwright.analysis.traffic.ResponseTime;
import hullwright.analysis.wiring.Medium;
import hullwright.documents.scene.Ink;
import hullwright.network.Boat;
import hullwright.network.data.MessageUse;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The figures that are shown as bars against a limit.
 */
final class BarCharts {

	/** A share beyond every limit, for what has no bound. */
	private static final double UNBOUNDED = 2;

	private BarCharts() {
	}

	/** Cables, the fullest first. */
	static Chart currents(Figures figures, PowerFlow flow) {
		Boat boat = figures.boat();
		Map<String, SpanReading> largest = new LinkedHashMap<>();
		flow.spans().stream().filter(reading -> reading.span().medium() instanceof Medium.Conductors && !reading.span().element().isEmpty())
				.forEach(reading -> largest.merge(reading.span().element(), reading, (one, other) -> one.larger().compareTo(other.larger()) >= 0 ? one : other));
		List<BarChart.Bar> bars = new ArrayList<>();
		List<List<String>> table = new ArrayList<>(List.of(List.of("cable", "network", "current, A", "rated, A", "used, %")));
		largest.values().stream().sorted(Comparator.comparing((SpanReading reading) -> reading.used().orElse(0.0)).reversed()).forEach(reading -> {
			String amperes = number(reading.larger().amperes());
			String rated = reading.rated().map(limit -> number(limit.amperes())).orElse("");
			bars.add(new BarChart.Bar(reading.span().element(), Names.within(boat, reading.span().element()), reading.used(), 0,
					amperes + " A" + (rated.isEmpty() ? ", no rating stated" : " of " + rated + " A"), Ink.ofNetwork(reading.span().network())));
			table.add(List.of(Names.within(boat, reading.span().element()), Names.simple(boat.networks().get(reading.span().network()).name()), amperes, rated,
					reading.used().map(used -> percent(used)).orElse("")));
		});
		return new Chart(new BarChart("Current through cables", "all that is rated", bars, 1).scene(), table);
	}

	/** Devices by network, the most talkative first; what events may add is open. */
	static Chart busLoad(Figures figures) {
		Boat boat = figures.boat();
		List<BarChart.Bar> bars = new ArrayList<>();
		List<List<String>> table = new ArrayList<>(List.of(List.of("network", "device", "regular, % of the bus", "with events, % of the bus")));
		for (int i = 0; i < figures.buses().size(); i++) {
			BusFigures bus = figures.buses().get(i);
			Ink ink = Ink.ofNetwork(i);
			String network = Names.simple(bus.traffic().network());
			double regular = bus.load().regular().worstShareOf(bus.load().bus());
			double events = bus.load().events().worstShareOf(bus.load().bus());
			bars.add(bar(bus.traffic().network(), network + ", all together", regular, events, ink));
			table.add(List.of(network, "all together", percent(regular), percent(regular + events)));
			bus.load().senders().stream().sorted(Comparator.comparingDouble((BusLoad.OfSender each) -> -share(each, bus))).forEach(sender -> {
				double own = sender.regular().worstShareOf(bus.load().bus());
				double more = sender.events().worstShareOf(bus.load().bus());
				bars.add(bar(sender.sender(), Names.within(boat, sender.sender()), own, more, ink));
				table.add(List.of(network, Names.within(boat, sender.sender()), percent(own), percent(own + more)));
			});
		}
		return new Chart(new BarChart("Bus load by device", "all of the bus", bars, 1).scene(), table);
	}

	private static double share(BusLoad.OfSender sender, BusFigures bus) {
		return sender.regular().plus(sender.events()).worstShareOf(bus.load().bus());
	}

	private static BarChart.Bar bar(String element, String name, double regular, double events, Ink ink) {
		return new BarChart.Bar(element, name, Optional.of(regular), events, percent(regular + events) + " %", ink);
	}

	/** Messages, those with the least time left first. */
	static Chart responses(Figures figures) {
		Boat boat = figures.boat();
		List<BarChart.Bar> bars = new ArrayList<>();
		List<List<String>> table = new ArrayList<>(List.of(List.of("network", "message", "device", "at most, ms", "every, ms")));
		for (int i = 0; i < figures.buses().size(); i++) {
			BusFigures bus = figures.buses().get(i);
			Ink ink = Ink.ofNetwork(i);
			bus.responses().messages().stream().sorted(Comparator.comparingDouble((MessageResponse each) -> -share(each))).forEach(each -> {
				String message = new MessageUse(each.message().pgn(), each.message().value()) + " " + each.message().pgn().title();
				String device = Names.within(boat, each.message().sender());
				double every = each.message().release().interval().seconds() * 1000;
				String most = each.time() instanceof ResponseTime.Bounded bounded ? number(bounded.worst().seconds() * 1000) : "";
				bars.add(new BarChart.Bar(each.message().sender(), message + ", " + device, Optional.of(share(each)), 0,
						(most.isEmpty() ? "no bound" : most + " ms") + " of " + number(every) + " ms", ink));
				table.add(List.of(Names.simple(bus.traffic().network()), message, device, most, number(every)));
			});
		}
		return new Chart(new BarChart("Response time of messages, at most", "due again", bars, 1).scene(), table);
	}

	private static double share(MessageResponse response) {
		double every = response.message().release().interval().seconds();
		return response.time() instanceof ResponseTime.Bounded bounded && every > 0 ? bounded.worst().seconds() / every : UNBOUNDED;
	}

	/** Serial lines in the order of the text, with the mark of what practice fills. */
	static Chart serialLines(Figures figures) {
		Boat boat = figures.boat();
		List<BarChart.Bar> bars = new ArrayList<>();
		List<List<String>> table = new ArrayList<>(List.of(List.of("line", "rate, bit/s", "regular, %", "with events, %")));
		for (SerialLineFigures line : figures.serialLines()) {
			String name = line.line().title().isEmpty() ? Names.within(boat, line.line().name()) : line.line().title();
			Optional<LineUse> use = line.use();
			double regular = use.map(each -> each.regular().fraction()).orElse(0.0);
			double more = use.map(each -> each.withEvents().fraction() - each.regular().fraction()).orElse(0.0);
			String rate = line.rate().rate().map(each -> number(each.bitsPerSecond())).orElse("");
			bars.add(new BarChart.Bar(line.line().name(), name, use.map(each -> regular), more,
					use.isEmpty() ? "rate not stated" : percent(regular + more) + " % of " + rate + " bit/s", Ink.SERIAL));
			table.add(List.of(name, rate, use.isEmpty() ? "" : percent(regular), use.isEmpty() ? "" : percent(regular + more)));
		}
		return new Chart(new BarChart("Load of serial lines", "all of the line", bars, LineUse.PRACTICE.fraction()).scene(), table);
	}

	private static String percent(double share) {
		return String.format(Locale.ROOT, share < 0.0995 ? "%.1f" : "%.0f", 100 * share);
	}

	private static String number(double value) {
		return String.format(Locale.ROOT, value >= 100 ? "%.0f" : value >= 10 ? "%.1f" : "%.2f", value);
	}
}
