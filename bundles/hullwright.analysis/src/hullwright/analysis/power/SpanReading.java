/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.Optional;

import hullwright.analysis.wiring.Span;
import hullwright.quantity.Current;
import hullwright.quantity.Voltage;

/**
 * The currents through a cable, a contact or a part.
 *
 * @param span what they flow through
 * @param supply through the supply conductor, positive from its first point to its second
 * @param back through the return conductor, positive in the same direction
 * @param rated what it may carry, if a catalog says
 * @param start the voltage between the two power conductors at its first point; 0 where no supply reaches
 * @param end the same at its second point
 */
public record SpanReading(Span span, Current supply, Current back, Optional<Current> rated, Voltage start, Voltage end) {

	/** The larger of both currents, without its direction. */
	public Current larger() {
		return new Current(Math.max(Math.abs(supply.amperes()), Math.abs(back.amperes())));
	}

	/** Which part of the rating is used, 1 being all of it; none if nothing is stated. */
	public Optional<Double> used() {
		return rated.filter(limit -> limit.amperes() > 0).map(larger()::dividedBy);
	}
}
