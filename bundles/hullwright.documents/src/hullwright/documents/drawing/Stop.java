/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Point;
import hullwright.network.CableRun;
import hullwright.network.Feed;
import hullwright.network.Fitting;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of a backbone where the drawing puts it, with its ports along its upper edge.
 */
final class Stop {

	static final double HEIGHT = 22;
	private static final double PORT_STEP = 10;
	private static final double LEAST_WIDTH = 24;

	final Fitting fitting;
	/** The cables between the part before it on the backbone and this one. */
	final List<CableRun> before;
	/** Left to right. */
	final List<Port> ports = new ArrayList<>();
	/** What hangs on it in its own place. */
	final CardStack cards = new CardStack();
	/** Supplies that enter here through a port. */
	final List<Feed> feeds = new ArrayList<>();
	DrawnPlace place;
	double x;
	double y;

	Stop(Fitting fitting, List<CableRun> before) {
		this.fitting = fitting;
		this.before = before;
	}

	/** A port, and what becomes of it. */
	static final class Port {
		final int number;
		boolean capped;
		/** What is plugged into it, if anything is. */
		Connection taken;
		double x;

		Port(int number) {
			this.number = number;
		}
	}

	double width() {
		return Math.max(LEAST_WIDTH, ports.size() * PORT_STEP + 10);
	}

	double left() {
		return x - width() / 2;
	}

	double right() {
		return x + width() / 2;
	}

	double top() {
		return y - HEIGHT / 2;
	}

	double bottom() {
		return y + HEIGHT / 2;
	}

	Point point() {
		return new Point(x, y);
	}

	/** Lines to elsewhere start at the left, so that they rise clear of the cards; then the drops to the cards, the topmost first. */
	void orderPorts() {
		ports.sort((one, other) -> Integer.compare(rank(one), rank(other)));
	}

	void spreadPorts() {
		double first = x - (ports.size() - 1) * PORT_STEP / 2;
		for (int i = 0; i < ports.size(); i++) {
			ports.get(i).x = first + i * PORT_STEP;
		}
	}

	private int rank(Port port) {
		if (port.taken == null) {
			return 2_000_000 + port.number;
		}
		return port.taken.isShort() ? 1_000_000 - cards.cards.indexOf(port.taken.to) : port.number;
	}

	/** All supplies that enter here, through the part or its ports, by qualified name. */
	List<String> supplies() {
		List<String> supplies = new ArrayList<>(fitting.details().feeds());
		feeds.forEach(feed -> supplies.addAll(feed.supplies()));
		return supplies;
	}
}
