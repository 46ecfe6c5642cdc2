/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.network.data.Pgn;
import org.junit.jupiter.api.Test;

class IdentifiersTest {

	private static Identifiers of(int number, Integer priority) {
		return Identifiers.of(Devices.pgn(number, Pgn.Transport.SINGLE, 8, priority));
	}

	/** Identifiers as they are known from recordings: 09F8017F is 129025 with priority 2, 18EEFF01 the claim of an address (priority 6). */
	@Test
	void aPgnThatGoesToAll() {
		assertEquals(new Identifiers(0x09F801, 0x09F801), of(129025, 2));
	}

	@Test
	void aPgnThatGoesToOneAddress() {
		assertEquals(new Identifiers(0x18EE00, 0x18EEFF), of(60928, 6));
		assertEquals(new Identifiers(0x0DED00, 0x0DEDFF), of(126208, 3));
	}

	@Test
	void aPriorityThatNobodyStatesMayBeAny() {
		assertEquals(new Identifiers(0x01F801, 0x1DF801), of(129025, null));
		assertEquals(of(129025, null), of(129025, 8));
		assertEquals(of(129025, null), of(129025, -1));
	}

	@Test
	void theLowerGoesFirst() {
		assertTrue(of(127250, 2).mayPrecede(of(126208, 3)));
		assertFalse(of(126208, 3).mayPrecede(of(127250, 2)));
		assertTrue(of(127245, 2).mayPrecede(of(127250, 2)));
		assertFalse(of(127250, 2).mayPrecede(of(127245, 2)));
		// who has the lower address goes first, and nobody knows who that is
		assertTrue(of(127250, 2).mayPrecede(of(127250, 2)));
		assertTrue(of(126985, null).mayPrecede(of(127250, 2)) && of(127250, 2).mayPrecede(of(126985, null)));
	}
}
