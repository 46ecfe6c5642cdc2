/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import hullwright.analysis.power.Conditions;
import hullwright.analysis.power.DeviceReading;
import hullwright.analysis.power.PowerCircuit;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.network.power.PowerState;
import hullwright.testkit.BoatText;
import java.util.Optional;

/**
 * A boat from a small text, and its operating points.
 *
 * @param boat the boat
 * @param wiring how its networks are joined
 */
record ComputedBoat(Boat boat, Wiring wiring) {

	/** The boat of a text of its own. */
	static ComputedBoat of(String text, String... options) {
		return of(BoatText.boat(text, options));
	}

	static ComputedBoat of(Boat boat) {
		return new ComputedBoat(boat, Wiring.of(boat));
	}

	/** A boat of {@link TestParts}, from the body of its series. */
	static ComputedBoat with(String series, String... options) {
		return of(TestParts.CATALOG + "series trial {\n" + series + "\n}", options);
	}

	/** Usual voltages and loads, copper at 20 °C, all switches on. */
	PowerFlow nominal() {
		return at(Conditions.nominal(Optional.empty()));
	}

	/** The same in one power state. */
	PowerFlow nominal(String state) {
		return at(Conditions.nominal(Optional.of(state(state))));
	}

	PowerFlow at(Conditions conditions) {
		return circuit(conditions.state()).solve(conditions);
	}

	PowerCircuit circuit(Optional<PowerState> state) {
		return PowerCircuit.of(boat, wiring, state);
	}

	PowerState state(String name) {
		return boat.power().states().stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
	}

	/** What a device gets, by its name below the series. */
	static DeviceReading reading(PowerFlow flow, String device) {
		return flow.devices().stream().filter(each -> each.device().endsWith("." + device)).findFirst()
				.orElseThrow(() -> new AssertionError("no device " + device + " among " + flow.devices()));
	}

	/** The voltage between the power contacts of a device, in V. */
	static double volts(PowerFlow flow, String device) {
		return reading(flow, device).voltage().volts();
	}

	/** How far the return of a device lies above the common negative, in V. */
	static double shift(PowerFlow flow, String device) {
		return reading(flow, device).shift().volts();
	}

	/** By how much the voltage of a device lies below that where the supply enters, in V. */
	static double drop(PowerFlow flow, String device) {
		return reading(flow, device).drop().orElseThrow().volts();
	}
}
