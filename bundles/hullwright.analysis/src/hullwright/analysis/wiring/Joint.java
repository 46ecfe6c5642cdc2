/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import hullwright.network.Origin;
import hullwright.network.part.Connector;
import hullwright.network.part.Part;
import hullwright.network.part.Terminator;
import java.util.Optional;

/**
 * A place where two connectors meet.
 *
 * @param kind where it is
 * @param near what lies before it: towards the start of the backbone, or towards the port that a branch starts at
 * @param far what lies behind it
 * @param run the backbone, the drop, the feed, the join or the cap that it belongs to
 * @param position before which element of the backbone, or before which piece of the branch, it lies, from 0
 */
public record Joint(Kind kind, Side near, Side far, Origin run, int position) {

	/** Where a joint is. */
	public enum Kind {
		/** Between two elements of a backbone. */
		BACKBONE,
		/** Between an in-line terminator and the device behind it. */
		BEHIND_TERMINATOR,
		/** Between a port and a device, or along the way between them. */
		DROP,
		/** Between a port and a supply. */
		FEED,
		/** In a cable from port to port. */
		JOIN,
		/** Between a port and its cap. */
		CAP
	}

	/**
	 * What lies on one side of a joint.
	 *
	 * @param label what people call it: the name of a part, {@code block.1}, {@code 2 m of light}
	 * @param origin the element and its place in the text
	 * @param part what it is, if the text says
	 * @param port the number of the port, where it is one of a tee or a block
	 * @param connector the connector that it shows to the joint; none where wires are bare, or the catalog does not say
	 */
	public record Side(String label, Origin origin, Optional<Part> part, Optional<Integer> port, Optional<Connector> connector) {

		/** A side that is no port. */
		Side(String label, Origin origin, Optional<Part> part, Optional<Connector> connector) {
			this(label, origin, part, Optional.empty(), connector);
		}

		/** Whether it is a terminator. */
		public boolean isTerminator() {
			return part.filter(Terminator.class::isInstance).isPresent();
		}
	}

	/** Whether the two sides plug into each other, as far as is known of them. */
	public boolean mates() {
		return near.connector.isEmpty() || far.connector.isEmpty() || near.connector.get().mates(far.connector.get());
	}

	/** Whether connectors of two families meet. */
	public boolean isBetweenFamilies() {
		return near.connector.isPresent() && far.connector.isPresent()
				&& !near.connector.get().family().name().equals(far.connector.get().family().name());
	}

	/** Whether a terminator is one of its sides. */
	public boolean isAtTerminator() {
		return near.isTerminator() || far.isTerminator();
	}

	/** The connector that plugs into the near side, if both sides are known. */
	public Optional<Connector> wantedByNear() {
		return near.connector.map(connector -> new Connector(connector.family(), connector.gender().opposite()));
	}
}
