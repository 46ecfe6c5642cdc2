/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import java.util.Optional;

/**
 * What a device draws from the network, as its catalog states it.
 *
 * @param nominal what it usually draws
 * @param behaviour how its current follows its voltage
 * @param behaviourWritten whether the text says so, or leaves it to the unit
 * @param reference the voltage at which it draws that in V, if the catalog says
 * @param most what it is guaranteed not to exceed, if the catalog says
 * @param start what it draws when it is switched on, if the catalog says
 */
record LoadData(Amount nominal, Behaviour behaviour, boolean behaviourWritten, Optional<Double> reference, Optional<Amount> most,
		Optional<Amount> start) {

	/** How a current follows the voltage. */
	enum Behaviour {
		CONSTANT_CURRENT("constant current"), RESISTIVE("resistive"), CONSTANT_POWER("constant power");

		/** How a text says it. */
		final String words;

		Behaviour(String words) {
			this.words = words;
		}
	}

	/** The unit of an amount; how many A, W or ohms it is. */
	enum Unit {
		MILLIAMPERE("mA", 1e-3), AMPERE("A", 1), LEN("LEN", 0.05), WATT("W", 1), OHM("ohm", 1);

		/** How a text writes it. */
		final String word;
		final double factor;

		Unit(String word, double factor) {
			this.word = word;
			this.factor = factor;
		}
	}

	/** An amount as it is written. */
	record Amount(double number, Unit unit) {

		double value() {
			return number * unit.factor;
		}

		@Override
		public String toString() {
			return HullText.number(number) + " " + unit.word;
		}
	}

	/** How much of its load a device takes. */
	enum Level {
		NOMINAL, GUARANTEED, START
	}

	private static final double USUAL_REFERENCE = 12;

	/** The amount at a level: what is not stated is as guaranteed, and what is not guaranteed as usual. */
	Amount amount(Level level) {
		Amount guaranteed = most.orElse(nominal);
		return switch (level) {
		case NOMINAL -> nominal;
		case GUARANTEED -> guaranteed;
		case START -> start.orElse(guaranteed);
		};
	}

	/** The current in A, the resistance in ohms or the power in W, as the behaviour is. */
	double value(Level level) {
		double at = reference.orElse(USUAL_REFERENCE);
		Amount amount = amount(level);
		double amperes = switch (amount.unit()) {
		case MILLIAMPERE, AMPERE, LEN -> amount.value();
		case WATT -> amount.value() / at;
		case OHM -> at / amount.value();
		};
		return switch (behaviour) {
		case CONSTANT_CURRENT -> amperes;
		case RESISTIVE -> at / amperes;
		case CONSTANT_POWER -> at * amperes;
		};
	}
}
