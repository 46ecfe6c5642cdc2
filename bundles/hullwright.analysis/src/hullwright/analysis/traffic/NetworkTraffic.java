/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.ArrayList;
import java.util.List;

import hullwright.network.FittedDevice;
import hullwright.network.Network;
import hullwright.network.data.Pgn;
import hullwright.network.data.SentMessage;

/**
 * What the devices of a network say they send on it. What bridges and gateways pass on is not in the list that {@link #of}
 * makes, since only the flow of data over all networks tells; {@link #plus} takes it in.
 *
 * @param network the qualified name of the network
 * @param nodes its devices
 * @param messages what they send, in the order of the text, one entry for each data instance
 * @param leftOut what they send and no figure counts
 */
public record NetworkTraffic(String network, List<Node> nodes, List<BusMessage> messages, List<LeftOut> leftOut) {

	public NetworkTraffic {
		nodes = List.copyOf(nodes);
		messages = List.copyOf(messages);
		leftOut = List.copyOf(leftOut);
	}

	/** What the devices of a network send. Sentences of a device go over its serial lines and are none of it. */
	public static NetworkTraffic of(Network network) {
		DevicesOnNetwork devices = DevicesOnNetwork.of(network);
		List<Node> nodes = new ArrayList<>();
		SentMessages sent = new SentMessages();
		for (FittedDevice device : devices.all()) {
			nodes.add(new Node(device.name(), Math.max(1, device.model().addresses())));
			for (SentMessage message : device.sends()) {
				if (message.use().message() instanceof Pgn pgn && devices.tells(device, message)) {
					sent.add(device.name(), pgn, message);
				}
			}
		}
		return new NetworkTraffic(network.name(), nodes, sent.messages(), sent.leftOut());
	}

	/** The same traffic with messages that bridges or gateways pass on into this network, which send them in their own name. */
	public NetworkTraffic plus(List<BusMessage> passedOn) {
		List<BusMessage> all = new ArrayList<>(messages);
		all.addAll(passedOn);
		return new NetworkTraffic(network, nodes, all, leftOut);
	}
}
