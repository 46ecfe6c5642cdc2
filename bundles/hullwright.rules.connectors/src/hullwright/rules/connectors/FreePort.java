/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.SparePort;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.part.Tee;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.PlugInto;
import java.util.List;
import java.util.Optional;

/**
 * Finds a free port for what cannot stay where it is.
 */
final class FreePort {

	private FreePort() {
	}

	/** The first port of a part that is neither used nor capped. */
	static Optional<SparePort> of(BoatUnderCheck boat, Network network, String part) {
		return boat.figures().sparePortsOf(network).stream().filter(spare -> spare.part().name().equals(part) && !spare.capped()).findFirst();
	}

	/** The first such port with the same connector as another port of the part. */
	static Optional<SparePort> like(BoatUnderCheck boat, Network network, String part, int port) {
		return boat.figures().sparePortsOf(network).stream().filter(spare -> spare.part().name().equals(part) && !spare.capped())
				.filter(spare -> spare.connector().equals(((Tee) spare.part().part()).ports().get(port))).findFirst();
	}

	/** Plugs a run into it. */
	static Fix fix(Origin run, String old, SparePort free) {
		return new Fix("Plug it into " + free.label() + ", which is free", Fix.Reach.DESIGN, List.of(new PlugInto(run, old, free.label())));
	}
}
