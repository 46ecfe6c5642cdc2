/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import hullwright.analysis.power.Conditions;
import hullwright.analysis.power.PowerCircuit;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.wiring.Medium;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.power.PowerState;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What our program computes for a boat, under the names that the netlist gives to the same things.
 */
final class OurAnswer {

	private static final String PREFIX = HullText.SERIES + ".";

	private OurAnswer() {
	}

	/** Voltages in V and currents in A of the boat that a text describes, in the operating point of a described boat. */
	static Map<String, Double> of(Boat boat, DescribedBoat described) {
		Optional<PowerState> state = described.state().map(wanted -> boat.power().states().stream().filter(each -> each.name().equals(wanted.name()))
				.findFirst().orElseThrow());
		PowerFlow flow = PowerCircuit.of(boat, Wiring.of(boat), state).solve(conditions(described.corner(), state));
		if (!flow.problems().isEmpty()) {
			throw new IllegalStateException("problems are told: " + flow.problems());
		}
		return values(flow);
	}

	private static Conditions conditions(DescribedBoat.Corner corner, Optional<PowerState> state) {
		return switch (corner) {
		case LOWEST -> Conditions.lowest(state);
		case NOMINAL -> Conditions.nominal(state);
		case HIGHEST -> Conditions.highest(state);
		case START_UP -> Conditions.starting(state);
		};
	}

	private static Map<String, Double> values(PowerFlow flow) {
		Map<String, Double> values = new HashMap<>();
		flow.devices().forEach(device -> {
			String name = device.device().substring(device.device().lastIndexOf('.') + 1);
			values.put("return at " + name, device.shift().volts());
			if (device.fed()) {
				values.put("voltage across " + name, device.voltage().volts());
				values.put("supply at " + name, device.shift().plus(device.voltage()).volts());
			}
		});
		flow.entries().forEach(entry -> {
			String part = name(entry.entry().part());
			String supply = name(entry.entry().supply());
			if (entry.on()) {
				values.put("supply current into " + part + " from " + supply, entry.current().amperes());
			}
			values.put("return current out of " + part + " to " + supply, entry.back().amperes());
		});
		flow.sources().forEach(source -> values.put("current of " + name(source.source()), source.current().amperes()));
		flow.fuses().forEach(fuse -> values.put("fuse of " + name(fuse.owner()), fuse.current().amperes()));
		flow.spans().stream().filter(span -> span.span().medium() instanceof Medium.Conductors).forEach(span -> {
			values.put("supply current in " + name(span.span().element()), span.supply().amperes());
			values.put("return current in " + name(span.span().element()), span.back().amperes());
		});
		return values;
	}

	private static String name(String qualified) {
		return qualified.startsWith(PREFIX) ? qualified.substring(PREFIX.length()) : qualified;
	}
}
