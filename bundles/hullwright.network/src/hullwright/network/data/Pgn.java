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
 */
public record Pgn(int number, String title, Transport transport, int length, boolean varies, Timing timing,
		Optional<Integer> priority, boolean instance, List<KeyField> keys) implements Message {

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
	}

	@Override
	public String name() {
		return String.valueOf(number);
	}

	/**
	 * Whether it is meant for one device, whose address stands in place of the lowest byte of the number: such as a command or an
	 * answer. The format of these numbers is that of SAE J1939-21 (from memory), as decoding the open CANboat sample logs confirms.
	 */
	public boolean isAddressed() {
		return (number >> 8 & 0xFF) < FIRST_FOR_ALL;
	}
}
