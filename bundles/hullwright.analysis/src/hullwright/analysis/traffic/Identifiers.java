/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.Optional;

import hullwright.network.data.Pgn;

/**
 * Where the identifier of a message may lie, as far as it is known before the network runs. Of two frames that start
 * together the one with the lower identifier goes first.
 *
 * <p>From its upper end an identifier consists of the priority (3 bits), the PGN (18) and the address of the sender (8), as
 * decoding the open CANboat sample logs confirms. Addresses are claimed when the network starts, so they are left out here:
 * the numbers are those of the upper 21 bits. Where the PGN is sent to one address ("PDU1"), its lowest 8 bits are that
 * address and open too. A priority that no source states is open as well.
 *
 * @param first the lowest number, the most urgent
 * @param last the highest number, the least urgent
 */
public record Identifiers(int first, int last) {

	private static final int PGN_BITS = 18;
	private static final int LEAST_URGENT = 7;

	/** Whether a PGN can have this number. */
	static boolean canBe(int pgn) {
		return pgn > 0 && pgn < 1 << PGN_BITS;
	}

	/** Where the identifiers of a message lie that is sent with its default priority. */
	public static Identifiers of(Pgn pgn) {
		Optional<Integer> priority = pgn.priority().filter(stated -> stated >= 0 && stated <= LEAST_URGENT);
		int destinations = pgn.isAddressed() ? 0xFF : 0;
		return new Identifiers(priority.orElse(0) << PGN_BITS | pgn.number() & ~destinations,
				priority.orElse(LEAST_URGENT) << PGN_BITS | pgn.number() | destinations);
	}

	/** Whether some order of addresses lets a frame with these identifiers go before one with the others. */
	public boolean mayPrecede(Identifiers others) {
		return first <= others.last;
	}
}
