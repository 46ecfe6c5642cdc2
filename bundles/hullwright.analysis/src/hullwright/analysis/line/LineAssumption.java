/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.List;

import hullwright.analysis.wiring.Medium;
import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.Quantity;
import hullwright.quantity.Resistance;

/**
 * Something about a line that no text states and that was taken as told here.
 *
 * @param kind what was assumed
 * @param subjects the qualified names of what it was assumed for, sorted
 */
public record LineAssumption(Kind kind, List<String> subjects) {

	/** What is assumed where a text is silent. */
	public enum Kind {
		/** A node shows 30 kohm across the signal pair; ISO 11898-2 allows 20 to 100 kohm (from memory). */
		INPUT_RESISTANCE(new Resistance(30_000)),
		/** A signal conductor is copper of 24 AWG, that of the light cable (NMEA installer slides). */
		SIGNAL_CONDUCTOR(new AmericanWireGauge(24)),
		/** A signal takes 5 ns a metre, as the table of bit timings does. */
		DELAY(BitTiming.USUAL_DELAY),
		/** A contact has 5 mohm. */
		CONTACT_RESISTANCE(Medium.Contact.USUAL),
		/** A terminator has 120 ohm (public NMEA 2000 guides). */
		TERMINATOR(new Resistance(120));

		private final Quantity assumed;

		Kind(Quantity assumed) {
			this.assumed = assumed;
		}

		/** The value that was taken. */
		public Quantity assumed() {
			return assumed;
		}
	}

	public LineAssumption {
		subjects = List.copyOf(subjects);
	}
}
