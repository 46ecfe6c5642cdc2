/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import java.util.Optional;

import hullwright.network.Origin;

/**
 * What joins two points.
 *
 * @param from the point towards the start of the backbone, or towards the backbone in a drop
 * @param to the other point
 * @param medium what it consists of
 * @param passes which conductors go through
 * @param element the qualified name of the part or cable; of the nearer of the two for contacts
 * @param other the qualified name of the other part of a contact
 * @param network the number of the network within the boat
 * @param origin the place in the text
 */
public record Span(int from, int to, Medium medium, Passes passes, String element, Optional<String> other, int network, Origin origin) {

	/**
	 * Which conductors go through.
	 *
	 * @param supply NET-S
	 * @param back NET-C, the return
	 * @param signal NET-H and NET-L
	 */
	public record Passes(boolean supply, boolean back, boolean signal) {

		/** All of them. */
		public static final Passes ALL = new Passes(true, true, true);
	}
}
