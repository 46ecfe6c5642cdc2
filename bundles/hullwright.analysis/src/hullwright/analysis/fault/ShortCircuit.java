/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.fault;

import java.util.List;
import java.util.Optional;

import hullwright.quantity.Current;
import hullwright.quantity.Duration;

/**
 * A short circuit between supply and return at one place, without any resistance of its own.
 *
 * @param network the qualified name of the network
 * @param at the qualified name of the device at whose contacts it is, or of the part at an end of a backbone
 * @param current the current at the fault before any fuse opens
 * @param limitedBy the qualified name of the converter that gives no more than this, if one limits it
 * @param openings the fuses that open, one after the other
 * @param ended how long it takes at most until no current flows; none if the fuses do not end it
 * @param conductor the qualified name of the cable that stands it for the shortest time; none if all stand it for ever
 * @param stands how long that cable stands it
 * @param verdict what comes of it
 */
public record ShortCircuit(String network, String at, Current current, Optional<String> limitedBy, List<FuseOpening> openings,
		Optional<Duration> ended, Optional<String> conductor, Optional<Duration> stands, Verdict verdict) {

	/** What comes of a short circuit. */
	public enum Verdict {
		/** Fuses end it before any conductor is harmed. */
		ENDED_IN_TIME,
		/** Fuses end it, but a conductor does not stand it for that long. */
		ENDED_TOO_LATE,
		/** No fuse ends it, and all that it flows through stands it for ever. */
		HARMLESS,
		/** No fuse ends it, and something that it flows through does not stand it for ever, or nothing tells what that stands. */
		NOT_ENDED,
		/** It depends on a fuse of which no catalog says how it opens; its current is above its rating. */
		FUSE_UNKNOWN,
		/** Nothing feeds the place, so nothing flows. */
		NO_CURRENT,
		/** Nothing in the way has any resistance: no current can be told. */
		WITHOUT_LIMIT
	}

	public ShortCircuit {
		openings = List.copyOf(openings);
	}
}
