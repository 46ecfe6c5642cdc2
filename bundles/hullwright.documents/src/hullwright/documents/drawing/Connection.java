/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Point;
import hullwright.network.Element;
import java.util.List;

/**
 * A line between a port or a card and another card or port.
 */
final class Connection {

	/** What a line is. */
	enum Kind {
		DROP, JOIN, SERIAL, RADIO
	}

	final Kind kind;
	/** The number of the network, from 0; the first for lines of no network. */
	final int network;
	/** The qualified name of the drop, join, serial line or radio link. */
	final String element;
	/** The cables and parts between, from the start on. */
	final List<Element> legs;
	/** Where it starts: a stop and its port, or a card. */
	final Stop stop;
	final Stop.Port port;
	final Card from;
	/** Where it ends: a card, or for a join a stop and its port. */
	final Card to;
	final Stop toStop;
	final Stop.Port toPort;
	/** Its course, once it is laid out. */
	List<Point> course = List.of();

	private Connection(Kind kind, int network, String element, List<Element> legs, Stop stop, Stop.Port port, Card from, Card to,
			Stop toStop, Stop.Port toPort) {
		this.kind = kind;
		this.network = network;
		this.element = element;
		this.legs = legs;
		this.stop = stop;
		this.port = port;
		this.from = from;
		this.to = to;
		this.toStop = toStop;
		this.toPort = toPort;
	}

	static Connection drop(int network, String element, List<Element> legs, Stop stop, Stop.Port port, Card to) {
		return new Connection(Kind.DROP, network, element, legs, stop, port, null, to, null, null);
	}

	static Connection join(int network, String element, List<Element> legs, Stop stop, Stop.Port port, Stop toStop, Stop.Port toPort) {
		return new Connection(Kind.JOIN, network, element, legs, stop, port, null, null, toStop, toPort);
	}

	static Connection between(Kind kind, int network, String element, List<Element> legs, Card from, Card to) {
		return new Connection(kind, network, element, legs, null, null, from, to, null, null);
	}

	/** Whether it leads from a part to a card of that part's own stack, the way most drops go. */
	boolean isShort() {
		return stop != null && to != null && to.stack == stop.cards;
	}
}
