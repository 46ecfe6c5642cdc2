/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.quantity.Resistance;

/**
 * What a sender sees across the signal pair.
 *
 * @param sender the qualified name of the device
 * @param load terminators, cables and all other nodes
 */
public record SenderLoad(String sender, Resistance load) {

	/** The least load for which a sender guarantees its level (ISO 11898-2, from memory). */
	public static final Resistance LEAST = new Resistance(50);

	/** The highest such load. */
	public static final Resistance MOST = new Resistance(65);

	/** Whether the sender guarantees its level at this load. */
	public boolean isGuaranteed() {
		return load.compareTo(LEAST) >= 0 && load.compareTo(MOST) <= 0;
	}
}
