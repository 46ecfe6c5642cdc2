/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.network.data.KeyValue;
import hullwright.network.data.SentMessage;
import java.util.List;
import java.util.Optional;

/**
 * A message that a bridge or gateway brings into a network. It sends it in its own name.
 *
 * @param network the qualified name of the network
 * @param teller the qualified name of the bridge or gateway
 * @param message what it sends, with how often it does
 * @param heard from where it comes: as irregularly as it may arrive from there it is sent here; none if the gateway keeps messages
 *        apart by itself
 */
public record PassedMessage(String network, String teller, SentMessage message, List<Heard> heard) {

	public PassedMessage {
		heard = List.copyOf(heard);
	}

	/**
	 * From where a message comes.
	 *
	 * @param sent as what it was sent on another network, if it was on one
	 * @param over the qualified names of the serial lines and wireless hops that it takes from there, or from its source
	 */
	public record Heard(Optional<SentOn> sent, List<String> over) {

		public Heard {
			over = List.copyOf(over);
		}
	}

	/**
	 * A message on a network.
	 *
	 * @param network the qualified name of the network
	 * @param sender the qualified name of the device that sends it there
	 * @param pgn its number
	 * @param value which of its sources, if the device says
	 * @param instance the data instance, if it has one
	 */
	public record SentOn(String network, String sender, int pgn, Optional<KeyValue> value, Optional<Integer> instance) {
	}
}
