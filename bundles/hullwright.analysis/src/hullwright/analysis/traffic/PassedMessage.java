/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.network.data.SentMessage;
import java.util.Optional;

/**
 * A message that a bridge or gateway brings into a network. It sends it in its own name.
 *
 * @param network the qualified name of the network
 * @param teller the qualified name of the bridge or gateway
 * @param message what it sends, with how often it does
 * @param heard where a bridge hears it, if that is on a network: what it takes there to arrive it differs by here
 */
public record PassedMessage(String network, String teller, SentMessage message, Optional<Heard> heard) {

	/**
	 * Where a message is heard.
	 *
	 * @param network the qualified name of the network
	 * @param sender the qualified name of the device that sends it there
	 */
	public record Heard(String network, String sender) {
	}
}
