/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.List;

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
		CONTACT_RESISTANCE,
		/** A power conductor is copper of 22 AWG, that of the light cable. */
		CONDUCTOR,
		/** A fuse or breaker has no resistance. */
		FUSE_RESISTANCE,
		/** A bank has no internal resistance. */
		BANK_RESISTANCE,
		/** A supply enters, or feeds a device that is not isolated, without any length of wire. */
		LEAD,
		/** A converter loses nothing. */
		EFFICIENCY,
		/** A load stated as a power, or as a current that follows the voltage, holds at 12 V. */
		REFERENCE_VOLTAGE,
		/** What a device draws at most is what it usually draws. */
		GUARANTEED_LOAD,
		/** A device draws nothing from the network. */
		LOAD,
		/** A source that is fed from another does not dip by itself. */
		DIP
	}

	public Assumption {
		subjects = List.copyOf(subjects);
	}
}
