/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

import java.util.Optional;

import hullwright.quantity.Duration;

/**
 * How often a message is told.
 *
 * @param every the interval, if it is told regularly
 * @param onEvent whether it is told when something happens
 * @param apart how long two of them are apart at least, if the text says
 */
public record Timing(Optional<Duration> every, boolean onEvent, Optional<Duration> apart) {

	/** Nobody says. */
	public static final Timing UNSTATED = new Timing(Optional.empty(), false, Optional.empty());

	/** Regularly. */
	public static Timing every(Duration interval) {
		return new Timing(Optional.of(interval), false, Optional.empty());
	}

	/** Whether anything is said at all. */
	public boolean isStated() {
		return every.isPresent() || onEvent;
	}
}
