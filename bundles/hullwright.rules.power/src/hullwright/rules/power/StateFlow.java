/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.PowerFlow;
import hullwright.network.power.PowerState;
import hullwright.rules.BoatUnderCheck;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * An operating point and the power state that it belongs to.
 *
 * @param flow the operating point
 * @param state the power state, if the text declares states
 */
record StateFlow(PowerFlow flow, Optional<PowerState> state) {

	/** The lowest voltages of every state in which no bank dips. */
	static List<StateFlow> lowest(BoatUnderCheck boat) {
		return of(boat, StateElectrics::lowest, false);
	}

	/** The lowest voltages of every state in which a bank dips. */
	static List<StateFlow> dipping(BoatUnderCheck boat) {
		return of(boat, StateElectrics::lowest, true);
	}

	/** All devices switched on at once, in every state in which no bank dips. */
	static List<StateFlow> starting(BoatUnderCheck boat) {
		return of(boat, StateElectrics::starting, false);
	}

	/** The highest voltages of every state. */
	static List<StateFlow> highest(BoatUnderCheck boat) {
		return Stream.concat(of(boat, StateElectrics::highest, false).stream(), of(boat, StateElectrics::highest, true).stream()).toList();
	}

	private static List<StateFlow> of(BoatUnderCheck boat, Function<StateElectrics, PowerFlow> corner, boolean dipping) {
		return boat.figures().electrics().states().stream()
				.filter(state -> state.state().map(each -> !each.dips().isEmpty()).orElse(false) == dipping)
				.map(state -> new StateFlow(corner.apply(state), state.state())).toList();
	}

	/** In which state, as a message says it; nothing where the text declares none. */
	static String words(Optional<PowerState> state) {
		return state.map(each -> " in state " + ShortName.of(each.name())).orElse("");
	}
}
