/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.OptionalInt;

import hullwright.network.data.Pgn;

/**
 * How many frames a message of the network takes.
 *
 * <p>A frame of CAN carries eight bytes. A fast packet spends the first byte of each frame on sequence and counter, and the
 * second of the first frame on the total length: six bytes of data in the first frame, seven in each that follows, at most 32
 * frames. The framing is from memory; 20 frames for the 134 bytes of product information were counted in an open log of a real
 * boat (CANboat sample logs, 40 of 40 messages).
 */
public final class Frames {

	private static final int IN_A_SINGLE_FRAME = 8;
	private static final int IN_THE_FIRST = 6;
	private static final int IN_EACH_OTHER = 7;

	/** The most bytes that a fast packet carries, in 32 frames. */
	public static final int MOST_BYTES = IN_THE_FIRST + 31 * IN_EACH_OTHER;

	private Frames() {
	}

	/**
	 * The frames of a fast packet.
	 *
	 * @param bytes its length in bytes
	 * @throws IllegalArgumentException if no fast packet has so many bytes
	 */
	public static int ofFastPacket(int bytes) {
		if (bytes < 0 || bytes > MOST_BYTES) {
			throw new IllegalArgumentException("a fast packet has at most " + MOST_BYTES + " bytes, not " + bytes);
		}
		return bytes <= IN_THE_FIRST ? 1 : 1 + (bytes - IN_THE_FIRST + IN_EACH_OTHER - 1) / IN_EACH_OTHER;
	}

	/** The frames of a PGN of its usual length; empty if the list does not say how long it is or how it is framed. */
	public static OptionalInt of(Pgn pgn) {
		boolean known = pgn.transport() != Pgn.Transport.UNSTATED && pgn.length() > 0;
		boolean fast = pgn.transport() == Pgn.Transport.FAST;
		if (!known || pgn.length() > (fast ? MOST_BYTES : IN_A_SINGLE_FRAME)) {
			return OptionalInt.empty();
		}
		return OptionalInt.of(fast ? ofFastPacket(pgn.length()) : 1);
	}
}
