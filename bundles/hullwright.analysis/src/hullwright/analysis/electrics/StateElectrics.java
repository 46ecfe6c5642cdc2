/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.electrics;

import java.util.List;
import java.util.Optional;

import hullwright.analysis.fault.ShortCircuit;
import hullwright.analysis.power.BreakingCurrent;
import hullwright.analysis.power.DeviceReading;
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

	/** Whether every figure is the same in another state. */
	public boolean isAlike(StateElectrics other) {
		return nominal.isAlike(other.nominal) && lowest.isAlike(other.lowest) && highest.isAlike(other.highest) && starting.isAlike(other.starting)
				&& taps.equals(other.taps) && shortCircuits.equals(other.shortCircuits) && breaking.equals(other.breaking);
	}

	/** Whether every figure of the networks is the same in another state; banks and supplies that feed none may differ. */
	public boolean feedsAlike(StateElectrics other) {
		return nominal.feedsAlike(other.nominal) && lowest.feedsAlike(other.lowest) && highest.feedsAlike(other.highest)
				&& starting.feedsAlike(other.starting) && taps.equals(other.taps) && shortCircuits.equals(other.shortCircuits);
	}

	/** Whether any device gets power from its network. */
	public boolean feedsAny() {
		return lowest.devices().stream().anyMatch(DeviceReading::fed);
	}
}
