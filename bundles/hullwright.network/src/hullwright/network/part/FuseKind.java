/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.List;
import java.util.Optional;

import hullwright.quantity.Current;
import hullwright.quantity.Duration;
import hullwright.quantity.Voltage;

/**
 * A kind of fuse or breaker.
 *
 * @param identity what it is called
 * @param ratings the ratings it is made in
 * @param drop the voltage across it at its rated current, if the catalog says; the same for all its ratings
 * @param openings points of its curve, by rising current
 * @param interrupts the largest fault current it can break, if the catalog says
 */
public record FuseKind(PartIdentity identity, List<Current> ratings, Optional<Voltage> drop, List<Opening> openings,
		Optional<Current> interrupts) implements Part {

	/**
	 * One point of the curve.
	 *
	 * @param times the current, as a multiple of the rating
	 * @param within how long it takes at most to open
	 */
	public record Opening(double times, Duration within) {
	}

	public FuseKind {
		ratings = List.copyOf(ratings);
		openings = List.copyOf(openings);
	}

	@Override
	public Ends ends() {
		return Ends.NONE;
	}
}
