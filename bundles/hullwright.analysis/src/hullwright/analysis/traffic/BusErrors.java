/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.quantity.Duration;

/**
 * How many errors of transmission to reckon with: some at once, then one in each interval. Each costs at most 31 bits to
 * signal and the frame that was sent again. The form is that of Tindell and Burns, "Guaranteeing message latencies on Control
 * Area Network", 1994; form and figure are from memory.
 *
 * @param atOnce how many may follow each other at once, at least 1
 * @param apart how long the others are apart at least, above zero
 */
public record BusErrors(int atOnce, Duration apart) {

	/** The bits that signalling an error and recovering from it take at most. */
	public static final int SIGNALLING_BITS = 31;

	public BusErrors {
		if (atOnce < 1 || !(apart.seconds() > 0)) {
			throw new IllegalArgumentException("errors are at least one at once and some time apart");
		}
	}
}
