/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.Optional;

import hullwright.quantity.BitRate;

/**
 * How fast a serial line signals.
 *
 * @param rate the rate, if it is known and can be
 * @param basis where it comes from
 */
public record LineRate(Optional<BitRate> rate, Basis basis) {

	/** Where the rate of a line comes from. */
	public enum Basis {
		/** The text states it. */
		STATED,
		/** It is the only one that all ends can be set to. */
		ONLY_SHARED,
		/** Nobody knows. */
		UNKNOWN
	}
}
