/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

import java.util.List;
import java.util.Optional;

/**
 * A parameter group of NMEA 2000.
 *
 * @param number its number
 * @param title what people call it
 * @param transport how it is framed
 * @param length its length in bytes, the usual one if it varies; 0 if nobody says
 * @param varies whether the length varies
 * @param timing how often it is told
 * @param priority its default priority, 0 the most urgent to 7
 * @param instance whether a data instance is part of what tells two sources apart
 * @param keys the other fields that tell two sources apart
 * @param successors the numbers of the messages that have taken its place, if it is obsolete
 */
public record Pgn(int number, String title, Transport transport, int length, boolean varies, Timing timing,
		Optional<Integer> priority, boolean instance, List<KeyField> keys, List<Integer> successors) implements Message {

	private static final int FIRST_FOR_ALL = 240;

	/** How a parameter group is framed. */
	public enum Transport {
		/** In one frame. */
		SINGLE,
		/** As a fast packet, in up to 32 frames. */
		FAST,
		/** The catalog does not say. */
		UNSTATED
	}

	public Pgn {
		keys = List.copyOf(keys);
		successors = List.copyOf(successors);
	}

	/** One that is in use. */
	public Pgn(int number, String title, Transport transport, int length, boolean varies, Timing timing, Optional<Integer> priority, boolean instance,
			List<KeyField> keys) {
		this(number, title, transport, length, varies, timing, priority, instance, keys, List.of());
	}

	@Override
	public String name() {
		return String.valueOf(number);
	}

	/**
	 * Whether a maker alone knows what it says: 61184, 65280 to 65535, 126720 and 130816 to 131071, as the open dataset of PGNs of
	 * CANboat (PGN-A) has them.
	 */
	public boolean isProprietary() {
		return number == 61184 || number == 126720 || number >= 65280 && number <= 65535 || number >= 130816 && number <= 131071;
	}

	/**
	 * Whether it is meant for one device, whose address stands in place of the lowest byte of the number: such as a command or an
	 * answer. The format of these numbers is that of SAE J1939-21 (from memory), as decoding the open CANboat sample logs confirms.
	 */
	public boolean isAddressed() {
		return (number >> 8 & 0xFF) < FIRST_FOR_ALL;
	}
}
