/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.Optional;

import hullwright.quantity.Duration;

/**
 * How long a message takes at most.
 *
 * @param message the message
 * @param time from when it is due to the end of its last frame
 */
public record MessageResponse(BusMessage message, ResponseTime time) {

	/**
	 * What is left of the interval until the message is due again; negative if it may then still be under way, and empty if
	 * there is no bound.
	 */
	public Optional<Duration> margin() {
		return time instanceof ResponseTime.Bounded bounded
				? Optional.of(message.release().interval().minus(bounded.worst()))
				: Optional.empty();
	}

	/** Whether it is surely through before it is due again. */
	public boolean isInTime() {
		return time instanceof ResponseTime.Bounded bounded && !bounded.worst().exceeds(message.release().interval());
	}
}
