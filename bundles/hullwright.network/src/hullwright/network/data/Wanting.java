/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

import java.util.List;
import java.util.Optional;

import hullwright.quantity.Duration;

/**
 * A message that a device cannot do without.
 *
 * @param uses the message, or those of which any one will do
 * @param atLeastEvery how often it must come, if the device says
 * @param port the port that it is listened for on; any, if empty
 */
public record Wanting(List<MessageUse> uses, Optional<Duration> atLeastEvery, Optional<String> port) {

	public Wanting {
		uses = List.copyOf(uses);
	}
}
