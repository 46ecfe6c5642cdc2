/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.EntryReading;
import hullwright.analysis.power.SourceReading;
import hullwright.analysis.power.SpanReading;
import hullwright.analysis.wiring.Medium;
import hullwright.network.Network;
import hullwright.network.power.Converter;
import hullwright.quantity.Current;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Currents against what may flow: through cables and contacts, supplies, fuses and sources. Of all power states the largest.
 */
final class CurrentTables {

	private final BoatElectrics boat;
	private final Wording wording;

	CurrentTables(BoatElectrics boat, Wording wording) {
		this.boat = boat;
		this.wording = wording;
	}

	private record Loaded(SpanReading reading, double used) {
	}

	/** Cables, adapters and contacts, the most loaded first. */
	TextTable conductors(Network network) {
		int number = boat.boat().networks().indexOf(network);
		List<Loaded> loaded = new ArrayList<>();
		for (int i = 0; i < boat.wiring().spans().size(); i++) {
			int span = i;
			if (boat.wiring().spans().get(i).network() == number && !(boat.wiring().spans().get(i).medium() instanceof Medium.Inside)) {
				boat.states().stream().map(state -> state.lowest().spans().get(span)).max(Comparator.comparing(SpanReading::larger))
						.ifPresent(reading -> loaded.add(new Loaded(reading, reading.used().orElse(0.0))));
			}
		}
		loaded.sort(Comparator.comparingDouble(Loaded::used).reversed());
		TextTable table = TextTable.worstFirst("Cable or contact", ">Supply", ">Return", ">Rated", ">Used");
		for (Loaded each : loaded) {
			SpanReading reading = each.reading;
			String name = wording.name(reading.span().element(), network.name())
					+ reading.span().other().map(other -> " | " + wording.name(other, network.name())).orElse("");
			table.row(name, Wording.amperes(positive(reading.supply())), Wording.amperes(positive(reading.back())), reading.rated().map(Current::toString).orElse("-"),
					reading.used().map(Wording::perCent).orElse("-"));
		}
		return table;
	}

	private static Current positive(Current current) {
		return new Current(Math.abs(current.amperes()));
	}

	/** Where supplies enter a network. */
	TextTable entries(Network network) {
		TextTable table = new TextTable("Supply", "Enters at", ">Current", ">Voltage there", ">Return there", "In state");
		int number = boat.boat().networks().indexOf(network);
		for (int i = 0; i < boat.wiring().entries().size(); i++) {
			int entry = i;
			if (boat.wiring().entries().get(i).network() == number) {
				boat.states().stream().filter(state -> state.lowest().entries().get(entry).on())
						.min(Comparator.comparing((StateElectrics state) -> state.lowest().entries().get(entry).voltage())).ifPresent(state -> {
							EntryReading reading = state.lowest().entries().get(entry);
							table.row(wording.name(reading.entry().supply()), wording.name(reading.entry().part(), network.name()),
									Wording.amperes(reading.current()), Wording.volts(reading.voltage()), Wording.volts(reading.shift()),
									boat.states().size() > 1 ? Wording.state(state.state()) : "");
						});
			}
		}
		return table;
	}

	/** Banks and converters of the boat. */
	TextTable sources() {
		TextTable table = new TextTable("Source", ">Open voltage", ">Gives", ">At most", ">Input", ">Takes", "In state");
		if (boat.states().isEmpty()) {
			return table;
		}
		List<String> names = boat.states().stream().flatMap(state -> state.lowest().sources().stream()).map(SourceReading::source).distinct().toList();
		for (String name : names) {
			boat.states().stream().flatMap(state -> state.lowest().sources().stream().filter(each -> each.source().equals(name))
					.map(each -> new OfState(state, each))).max(Comparator.comparing(each -> each.source.current())).ifPresent(each -> table.row(
							wording.name(name), Wording.volts(each.source.voltage()), Wording.amperes(each.source.current()), atMost(name),
							each.source.input().map(input -> Wording.volts(input.voltage())).orElse(""),
							each.source.input().map(input -> Wording.number(input.power().watts(), 1) + " W").orElse(""),
							boat.states().size() > 1 && each.source.current().amperes() != 0 ? Wording.state(each.state.state()) : ""));
		}
		return table;
	}

	/** What a converter gives at most, if its text says. */
	private String atMost(String name) {
		return boat.boat().power().converters().stream().filter(each -> each.name().equals(name)).findFirst().flatMap(Converter::most)
				.map(Current::toString).orElse("");
	}

	private record OfState(StateElectrics state, SourceReading source) {
	}
}
