/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.quantity.Voltage;

/**
 * How much of a dominant level is left where it is heard worst, all nodes loading the line.
 *
 * @param sender the qualified name of the device that sends
 * @param receiver the qualified name of the device that hears it worst
 * @param sent the level at the pins of the sender that ISO 11898-2 guarantees (1.5 V, from memory)
 * @param heard the level at the pins of the receiver
 */
public record SignalLevel(String sender, String receiver, Voltage sent, Voltage heard) {

	/** The level that a sender guarantees as long as the load is within bounds (ISO 11898-2, from memory). */
	public static final Voltage GUARANTEED = new Voltage(1.5);

	/** The level from which on every receiver takes a bit as dominant (ISO 11898-2, from memory). */
	public static final Voltage THRESHOLD = new Voltage(0.9);

	/** How far the level lies above what every receiver understands; negative if below. */
	public Voltage margin() {
		return heard.minus(THRESHOLD);
	}
}
