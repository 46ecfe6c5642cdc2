/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.traffic.BusFigures;
import hullwright.network.Boat;
import hullwright.network.power.PowerState;
import java.util.List;

/**
 * All figures of one boat, for those who print or draw them.
 *
 * @param electrics voltages, currents, faults and signal lines
 * @param buses the traffic, one entry for each network
 */
public record BoatFigures(BoatElectrics electrics, List<BusFigures> buses) {

	public BoatFigures {
		buses = List.copyOf(buses);
	}

	/** Computes everything. */
	public static BoatFigures of(Boat boat) {
		return new BoatFigures(BoatElectrics.of(boat), BusFigures.of(boat));
	}

	/** Computes everything, the electrics in one power state only. */
	public static BoatFigures of(Boat boat, PowerState state) {
		return new BoatFigures(BoatElectrics.of(boat, state), BusFigures.of(boat));
	}
}
