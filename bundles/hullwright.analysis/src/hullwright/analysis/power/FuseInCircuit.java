/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.List;
import java.util.Optional;

import hullwright.analysis.wiring.BackboneSide;
import hullwright.network.part.Fuse;

/**
 * A fuse or breaker in a supply conductor.
 *
 * @param owner the qualified name of the supply, tap or cord that it belongs to
 * @param side which side it protects, of a tap with a fuse for each
 * @param fuse what it is
 * @param resistor the number of the resistor that it stands in
 * @param behind where a short circuit that it must break may be: at its end, or at either end if current may come from both
 */
record FuseInCircuit(String owner, Optional<BackboneSide> side, Fuse fuse, int resistor, List<Side> behind) {

	/** The supply conductor at an end of a fuse, and the return conductor there. */
	record Side(int plus, int minus) {
	}
}
