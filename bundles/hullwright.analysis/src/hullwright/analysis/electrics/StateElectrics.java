/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.electrics;

import java.util.List;
import java.util.Optional;

import hullwright.analysis.fault.ShortCircuit;
import hullwright.analysis.power.BreakingCurrent;
import hullwright.analysis.power.PowerFlow;
import hullwright.analysis.power.TapPlace;
import hullwright.network.power.PowerState;

/**
 * The electrics of a boat in one power state.
 *
 * @param state which switches are on; all of them if the text declares no states
 * @param nominal everything as it usually is
 * @param lowest the lowest voltages: lowest bank, guaranteed loads, hottest wire
 * @param highest the highest voltages: highest bank, usual loads, coldest wire
 * @param starting all devices switched on at once, from the lowest bank over the hottest wire
 * @param taps where the supplies would best enter
 * @param shortCircuits short circuits at the ends of every branch, at the least current: lowest bank, hottest wire
 * @param breaking what each fuse and breaker is asked to break at most: highest bank, coldest wire
 */
public record StateElectrics(Optional<PowerState> state, PowerFlow nominal, PowerFlow lowest, PowerFlow highest, PowerFlow starting,
		List<TapPlace> taps, List<ShortCircuit> shortCircuits, List<BreakingCurrent> breaking) {

	public StateElectrics {
		taps = List.copyOf(taps);
		shortCircuits = List.copyOf(shortCircuits);
		breaking = List.copyOf(breaking);
	}
}
