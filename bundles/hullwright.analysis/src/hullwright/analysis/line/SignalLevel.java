/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.quantity.Resistance;
import hullwright.quantity.Voltage;

/**
 * How much of a dominant level is left where it is heard worst, all nodes loading the line.
 *
 * @param sender the qualified name of the device that sends
 * @param receiver the qualified name of the device that hears it worst
 * @param sent the level at the pins of the sender that ISO 11898-2 guarantees (1.5 V, from memory)
 * @param heard the level at the pins of the receiver
 * @param load what the sender sees across the pair
 */
public record SignalLevel(String sender, String receiver, Voltage sent, Voltage heard, Resistance load) {

	/** The level that a sender guarantees as long as the load is within bounds (ISO 11898-2, from memory). */
	static final Voltage GUARANTEED = new Voltage(1.5);

	/** The level from which on every receiver takes a bit as dominant (ISO 11898-2, from memory). */
	static final Voltage THRESHOLD = new Voltage(0.9);

	/** The least load for which the level is guaranteed, in ohm (ISO 11898-2, from memory). */
	private static final double LEAST_LOAD = 50;

	/** The highest such load, in ohm. */
	private static final double MOST_LOAD = 65;

	/** How far the level lies above what every receiver understands; negative if below. */
	public Voltage margin() {
		return heard.minus(THRESHOLD);
	}

	/** Whether the sender guarantees its level at this load. */
	public boolean isGuaranteed() {
		return load.ohms() >= LEAST_LOAD && load.ohms() <= MOST_LOAD;
	}
}
