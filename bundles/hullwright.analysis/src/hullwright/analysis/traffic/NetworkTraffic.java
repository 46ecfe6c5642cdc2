/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import hullwright.network.FittedDevice;
import hullwright.network.Network;
import hullwright.network.data.Pgn;
import hullwright.network.data.SentMessage;
import hullwright.quantity.Duration;

/**
 * What is sent on a network: what its devices tell of their own, and what bridges and gateways bring, which only the flow of data
 * over all networks tells.
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

	/** What the devices of a network send of their own. Sentences of a device go over its serial lines and are none of it. */
	public static NetworkTraffic of(Network network) {
		return of(network, List.of(), message -> new Duration(0));
	}

	/**
	 * What is sent on a network.
	 *
	 * @param passed what bridges and gateways bring into it
	 * @param jitter by how much the moments may differ at which a bridge has such a message ready
	 */
	public static NetworkTraffic of(Network network, List<PassedMessage> passed, Function<PassedMessage, Duration> jitter) {
		DevicesOnNetwork devices = DevicesOnNetwork.of(network);
		List<Node> nodes = new ArrayList<>();
		SentMessages sent = new SentMessages();
		for (FittedDevice device : devices.all()) {
			nodes.add(new Node(device.name(), Math.max(1, device.model().addresses())));
			for (SentMessage message : device.sends()) {
				if (message.use().message() instanceof Pgn pgn && devices.tells(device, message)) {
					sent.add(device.name(), pgn, message, new Duration(0));
				}
			}
		}
		for (PassedMessage each : passed) {
			if (each.network().equals(network.name()) && each.message().use().message() instanceof Pgn pgn) {
				sent.add(each.teller(), pgn, each.message(), jitter.apply(each));
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
