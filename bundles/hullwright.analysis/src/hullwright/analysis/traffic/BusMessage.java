/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.Optional;

import hullwright.network.data.KeyValue;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Pgn;
import hullwright.quantity.Duration;

/**
 * A message that one device sends on a network, with all that decides how it loads the bus.
 *
 * @param sender the qualified name of the device
 * @param pgn what it is
 * @param value which of its sources, if the device says
 * @param instance the data instance, if the message has one
 * @param packet how it is cut into frames
 * @param identifiers where its identifier may lie
 * @param release when it is sent
 * @param jitter how much the moment at which it stands in the queue of the controller may differ; zero or more
 */
public record BusMessage(String sender, Pgn pgn, Optional<KeyValue> value, Optional<Integer> instance, Packet packet,
		Identifiers identifiers, Release release, Duration jitter) {

	/** Whether the list states its priority; if not, it is reckoned urgent for others and not urgent for itself. */
	public boolean isPriorityStated() {
		return pgn.priority().isPresent();
	}

	/** The same message with another jitter, such as what a bridge adds that passes it on. */
	public BusMessage withJitter(Duration other) {
		return new BusMessage(sender, pgn, value, instance, packet, identifiers, release, other);
	}

	@Override
	public String toString() {
		return new MessageUse(pgn, value) + " from " + sender;
	}
}
