/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.quantity.Duration;

/**
 * How long it takes at most from the moment at which a message is due to the moment at which the last bit of its last frame is
 * on the wire.
 */
public sealed interface ResponseTime {

	/**
	 * It takes at most so long.
	 *
	 * @param worst the bound
	 * @param busyPeriod how long the bus may be busy without a pause with this message and all that may precede it
	 */
	record Bounded(Duration worst, Duration busyPeriod) implements ResponseTime {
	}

	/**
	 * Nothing can be promised.
	 *
	 * @param reason why
	 */
	record Unbounded(Reason reason) implements ResponseTime {
	}

	/** Why there is no bound. */
	enum Reason {
		/** The message and all that may precede it fill the bus or more, errors of transmission included. */
		OVERLOADED,
		/** The bus may be busy for longer than the horizon of the assumptions. */
		BEYOND_HORIZON,
		/** A device that sends in the order in which messages came has no bound, and its messages may precede this one. */
		QUEUE_WITHOUT_BOUND
	}
}
