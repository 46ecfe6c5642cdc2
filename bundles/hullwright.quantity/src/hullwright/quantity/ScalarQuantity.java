/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * A quantity that can be added, scaled and compared with others of its kind.
 *
 * @param <Q> the kind itself, so that arithmetic stays within it
 */
public sealed interface ScalarQuantity<Q extends ScalarQuantity<Q>> extends Quantity, Comparable<Q>
		permits Length, Voltage, Current, Power, Resistance, ResistancePerLength, DelayPerLength, Duration, BitRate, Ratio {

	/**
	 * Two values closer than this fraction count as equal when a limit is checked, so that 0.4 m + 4.7 m + 0.9 m does not
	 * exceed 6 m through the rounding of binary fractions.
	 */
	double TOLERANCE = 1e-9;

	/** The value in the SI unit of {@link #dimension()}. */
	double si();

	/** The same kind of quantity with another value, in SI units. */
	Q withSi(double si);

	/** The sum of both. */
	default Q plus(Q other) {
		return withSi(si() + other.si());
	}

	/** This less the other. */
	default Q minus(Q other) {
		return withSi(si() - other.si());
	}

	/** This many times over. */
	default Q times(double factor) {
		return withSi(si() * factor);
	}

	/** How many times the other fits into this; infinite or NaN if the other is zero. */
	default double dividedBy(Q other) {
		return si() / other.si();
	}

	/** Whether this lies above a limit by more than rounding, see {@link #TOLERANCE}. */
	default boolean exceeds(Q limit) {
		return si() - limit.si() > TOLERANCE * Math.max(Math.abs(si()), Math.abs(limit.si()));
	}

	@Override
	default int compareTo(Q other) {
		return Double.compare(si(), other.si());
	}
}
