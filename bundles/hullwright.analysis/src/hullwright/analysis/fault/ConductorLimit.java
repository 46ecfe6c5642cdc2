/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.fault;

import java.util.Optional;

import hullwright.analysis.conductor.CopperConductor;
import hullwright.quantity.ConductorSize;
import hullwright.quantity.Current;
import hullwright.quantity.Duration;

/**
 * How long a conductor stands a fault current before its insulation is harmed.
 *
 * <p>The conductor is taken as a body with one time constant. Two facts fix it: the rated current holds it at 70 °C in air of
 * 30 °C, and in a short time all heat stays in the copper, so that it goes from 70 °C to 160 °C in t = (k·S/I)², S in mm² and k
 * = 115 for copper in PVC (IEC 60364-4-43, 434.5.2 and table 43A, from memory). The fault finds it at 70 °C.
 * A current that never gets it to 160 °C ages it all the same: it stands that for the conventional hour of protective devices.
 */
public final class ConductorLimit {

	/** In A·√s/mm². */
	static final double PVC_COPPER = 115;

	/** What a wire of which no catalog states a rating carries for ever, in A/mm² (common practice). */
	static final double USUAL_DENSITY = 6;

	/** By how much the rated current warms a conductor, in K. */
	private static final double RATED_RISE = 40;

	/** By how much more than the air PVC may be at the end of a short circuit, in K. */
	private static final double HARMFUL_RISE = 130;

	private static final Duration HOUR = new Duration(3600);

	private ConductorLimit() {
	}

	/** What a conductor carries for ever: what a catalog says, else 6 A for each mm² (common practice). */
	public static Current bears(ConductorSize size, Optional<Current> rated) {
		return rated.orElseGet(() -> new Current(USUAL_DENSITY * CopperConductor.squareMillimetres(size)));
	}

	/**
	 * How long a conductor stands a current.
	 *
	 * @param rated what it may carry for ever, if a catalog says
	 * @return nothing if it stands it for ever
	 */
	public static Optional<Duration> stands(ConductorSize size, Optional<Current> rated, Current current) {
		double amperes = Math.abs(current.amperes());
		double squareMillimetres = CopperConductor.squareMillimetres(size);
		double forEver = bears(size, rated).amperes();
		if (amperes <= forEver) {
			return Optional.empty();
		}
		double adiabatic = Math.pow(PVC_COPPER * squareMillimetres / amperes, 2);
		double settles = RATED_RISE * Math.pow(amperes / forEver, 2);
		if (settles <= HARMFUL_RISE) {
			return Optional.of(HOUR);
		}
		double timeConstant = adiabatic * settles / (HARMFUL_RISE - RATED_RISE);
		double seconds = timeConstant * Math.log((settles - RATED_RISE) / (settles - HARMFUL_RISE));
		return Optional.of(new Duration(Math.min(seconds, HOUR.seconds())));
	}
}
