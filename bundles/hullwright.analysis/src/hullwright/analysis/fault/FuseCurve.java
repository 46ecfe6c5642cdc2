/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.fault;

import java.util.List;
import java.util.Optional;

import hullwright.network.part.Fuse;
import hullwright.network.part.FuseKind;
import hullwright.quantity.Current;
import hullwright.quantity.Duration;

/**
 * How long a fuse or breaker takes at most to open. Its catalog gives points of its curve; between two of them a straight line is
 * drawn on logarithmic axes, the way data sheets print such curves; where zero has no place on them, the slower point holds. Beyond
 * its last point a fuse lets no more energy through: the time falls with the square of the current (common practice).
 */
public final class FuseCurve {

	private FuseCurve() {
	}

	/**
	 * How long a fuse takes at most at a current.
	 *
	 * @return nothing if its catalog does not promise that it opens at all: below its first point, or without a curve
	 */
	public static Optional<Duration> opensWithin(Fuse fuse, Current current) {
		List<FuseKind.Opening> points = fuse.kind().map(FuseKind::openings).orElse(List.of());
		double times = current.amperes() / fuse.rating().amperes();
		if (points.isEmpty() || !(times >= points.get(0).times())) {
			return Optional.empty();
		}
		FuseKind.Opening below = points.get(0);
		for (FuseKind.Opening above : points) {
			if (above.times() > times) {
				if (!(below.times() > 0 && below.within().seconds() > 0 && above.within().seconds() > 0)) {
					return Optional.of(below.within());
				}
				double share = Math.log(times / below.times()) / Math.log(above.times() / below.times());
				return Optional.of(new Duration(below.within().seconds() * Math.pow(above.within().seconds() / below.within().seconds(), share)));
			}
			below = above;
		}
		return Optional.of(new Duration(below.within().seconds() * Math.pow(below.times() / times, 2)));
	}
}
