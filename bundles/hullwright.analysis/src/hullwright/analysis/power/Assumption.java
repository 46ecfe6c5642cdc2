/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.List;
import java.util.Optional;

import hullwright.analysis.wiring.Medium;
import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Quantity;
import hullwright.quantity.Ratio;
import hullwright.quantity.Resistance;

/**
 * Something that no text states and that was taken as told here.
 *
 * @param kind what was assumed
 * @param subjects the qualified names of what it was assumed for, sorted
 */
public record Assumption(Kind kind, List<String> subjects) {

	/** What is assumed where a text is silent. */
	public enum Kind {
		/** A contact has 5 mohm, the budget for every connection (DeviceNet media handbook DNET-UM072C-EN-P, p. 4-21). */
		CONTACT_RESISTANCE(Medium.Contact.USUAL),
		/** A power conductor is copper of 22 AWG, that of the light cable (NMEA installer slides). */
		CONDUCTOR(new AmericanWireGauge(22)),
		/** A fuse or breaker has no resistance. */
		FUSE_RESISTANCE(new Resistance(0)),
		/** A bank has no internal resistance. */
		BANK_RESISTANCE(new Resistance(0)),
		/** A supply enters, or feeds a device that is not isolated, without any length of wire. */
		LEAD(Length.ZERO),
		/** A converter loses nothing. */
		EFFICIENCY(new Ratio(1)),
		/** A load stated as a power, or as a current that follows the voltage, holds at 12 V. */
		REFERENCE_VOLTAGE(LoadDemand.USUAL),
		/** What a device draws at most is what it usually draws. */
		GUARANTEED_LOAD(null),
		/** A device draws nothing from the network. */
		LOAD(new Current(0)),
		/** A source that is fed from another does not dip by itself. */
		DIP(null);

		private final Quantity assumed;

		Kind(Quantity assumed) {
			this.assumed = assumed;
		}

		/** The value that was taken, if it is the same for all. */
		public Optional<Quantity> assumed() {
			return Optional.ofNullable(assumed);
		}
	}

	public Assumption {
		subjects = List.copyOf(subjects);
	}
}
