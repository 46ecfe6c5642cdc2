/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.network.Backbone;
import hullwright.network.Element;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.part.PartIdentity;
import hullwright.quantity.Resistance;
import java.util.List;
import java.util.Optional;

/**
 * A terminating resistor on a backbone or on what hangs on it, and where it sits.
 *
 * @param origin the terminator, the device or the cord that has it
 * @param part what that is in the catalog
 * @param resistance its value, if the catalog says
 * @param where where it sits
 * @param beyond what lies behind it in the backbone, on the side with fewer parts, if it sits between parts
 */
public record TerminatorPlace(Origin origin, PartIdentity part, Optional<Resistance> resistance, Where where, Optional<Element> beyond) {

	/** The terminating resistors of a backbone of this network and of what hangs on it: those in the walk, then those on ports. */
	public static List<TerminatorPlace> of(Network network, Backbone backbone) {
		return TerminatorPlaces.of(network, backbone);
	}

	/** Where a terminating resistor sits. */
	public enum Where {
		/** At an end of the backbone, where it belongs: in the walk or plugged into the part there. */
		AT_END,
		/** In the walk, with parts on both sides. */
		BETWEEN,
		/** In the walk in line with a device that is to come behind it, with parts of the backbone on both sides. */
		IN_LINE_BETWEEN,
		/** A terminator on a port that is meant for a drop. */
		ON_PORT,
		/** Built into a device or a cord that hangs on the backbone and closes no end of it. */
		BUILT_IN
	}
}
