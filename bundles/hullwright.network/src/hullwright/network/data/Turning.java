/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

import java.util.List;
import java.util.Optional;

import hullwright.quantity.Duration;

/**
 * A rule of a gateway: one message is made from another.
 *
 * @param from what comes in; all of it is needed
 * @param to what goes out
 * @param atMostEvery how often it goes out at most, if the gateway limits it
 * @param port the serial line or radio that it concerns; any, if empty
 */
public record Turning(List<MessageUse> from, List<MessageUse> to, Optional<Duration> atMostEvery, Optional<String> port) {

	public Turning {
		from = List.copyOf(from);
		to = List.copyOf(to);
	}
}
