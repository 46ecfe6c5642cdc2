/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.Termination;
import hullwright.network.Backbone;
import hullwright.network.Network;
import hullwright.rules.BoatUnderCheck;

/**
 * How many ends of a backbone nothing terminates.
 */
final class OpenEnds {

	private OpenEnds() {
	}

	static int of(BoatUnderCheck boat, Network network, Backbone backbone) {
		Termination termination = boat.figures().terminationOf(network, backbone);
		return (termination.start().isEmpty() ? 1 : 0) + (termination.end().isEmpty() ? 1 : 0);
	}
}
