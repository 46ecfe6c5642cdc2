/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

/**
 * The kinds of quantity, each with what a person calls it and how one is written.
 */
public enum Dimension {
	/** Metres. */
	LENGTH("length", "6 m"),
	/** Volts. */
	VOLTAGE("voltage", "12 V"),
	/** Amperes; also load equivalency numbers. */
	CURRENT("current", "3 A"),
	/** Watts. */
	POWER("power", "6 W"),
	/** Ohms. */
	RESISTANCE("resistance", "120 ohm"),
	/** Ohms per metre of one conductor. */
	RESISTANCE_PER_LENGTH("resistance per length", "57 mohm/m"),
	/** Seconds per metre. */
	DELAY_PER_LENGTH("delay per length", "4.46 ns/m"),
	/** Seconds. */
	DURATION("duration", "250 ms"),
	/** Bits per second. */
	BIT_RATE("bit rate", "4800 baud"),
	/** A fraction of one. */
	RATIO("percentage", "85 %"),
	/** A gauge number or a cross-section. */
	CONDUCTOR_SIZE("conductor size", "1.5 mm2");

	private final String label;
	private final String example;

	Dimension(String label, String example) {
		this.label = label;
		this.example = example;
	}

	/** What a person calls this kind, for example {@code length}. */
	public String label() {
		return label;
	}

	/** A well-formed quantity of this kind, for messages. */
	public String example() {
		return example;
	}
}
