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
 * How long a conductor stands a fault current.
 *
 * <p>Up to 1.45 times its rated current it stands it for the conventional hour (IEC 60364-4-43, 433.1, from memory). Above that all
 * heat is taken to stay in the copper: t = (k·S/I)² with S in mm² and k = 115 for copper in PVC, from 70 °C to 160 °C (IEC
 * 60364-4-43, 434.5.2 and table 43A, from memory). For times of minutes this is on the safe side, since the insulation carries
 * heat away.
 */
public final class ConductorLimit {

	/** In A·√s/mm². */
	static final double PVC_COPPER = 115;

	/** Which overload a conductor stands for an hour. */
	static final double OVERLOAD = 1.45;

	/** What a wire of which no catalog states a rating carries for ever, in A/mm² (common practice). */
	static final double USUAL_DENSITY = 6;

	private static final Duration HOUR = new Duration(3600);

	private ConductorLimit() {
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
		double forEver = rated.map(Current::amperes).orElse(USUAL_DENSITY * squareMillimetres);
		if (amperes <= forEver) {
			return Optional.empty();
		}
		double root = PVC_COPPER * squareMillimetres / amperes;
		Duration adiabatic = new Duration(root * root);
		return Optional.of(amperes <= OVERLOAD * forEver && adiabatic.compareTo(HOUR) < 0 ? HOUR : adiabatic);
	}
}
