/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.List;
import java.util.Optional;

import hullwright.quantity.Quantity;

/**
 * Something about serial lines that no text states and that was taken as told here.
 *
 * @param kind what was assumed
 * @param subjects the qualified names of the ports that it was assumed for, sorted
 */
public record SerialAssumption(Kind kind, List<String> subjects) {

	/** What is assumed where a text is silent. */
	public enum Kind {
		/**
		 * A listener draws 2 mA at 2 V, the most it may (radio manuals, sections 9.3 and 9.4 on the digital interface). An RS-232 input
		 * has 3 kohm at least and draws less (from memory).
		 */
		LISTENER_DRAW(TalkerDrive.LISTENER_DRAWS),
		/**
		 * An isolated listener takes the signal as a voltage across two wires, as the listeners of the standard do (digital-interface
		 * appendices of public installation manuals).
		 */
		LISTENER_LEVEL(null),
		/** A port of which nobody says how fast it can signal follows the others. */
		PORT_RATE(null);

		private final Quantity assumed;

		Kind(Quantity assumed) {
			this.assumed = assumed;
		}

		/** The value that was taken, if it is one. */
		public Optional<Quantity> assumed() {
			return Optional.ofNullable(assumed);
		}
	}

	public SerialAssumption {
		subjects = List.copyOf(subjects);
	}
}
