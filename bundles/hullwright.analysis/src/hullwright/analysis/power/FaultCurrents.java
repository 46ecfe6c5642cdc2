/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.List;
import java.util.Optional;

import hullwright.analysis.wiring.BackboneSide;
import hullwright.network.part.Fuse;
import hullwright.quantity.ConductorSize;
import hullwright.quantity.Current;

/**
 * The currents of a short circuit at one place.
 *
 * @param current at the fault; none if nothing limits it
 * @param limitedBy the qualified name of the converter that gives no more, if one limits it
 * @param fuses through each fuse and breaker that is still closed
 * @param leads through the supply wire of each lead
 * @param spanCurrents by number of the span, through the more loaded of its two power conductors, in A; 0 for what
 *        is neither a length of conductors nor rated
 */
public record FaultCurrents(Optional<Current> current, Optional<String> limitedBy, List<ThroughFuse> fuses,
		List<ThroughLead> leads, double[] spanCurrents) {

	/**
	 * The fault current through a fuse.
	 *
	 * @param number the number of the fuse in the circuit
	 * @param owner the qualified name of what it belongs to
	 * @param side which side it protects, of a tap with a fuse for each
	 */
	public record ThroughFuse(int number, String owner, Optional<BackboneSide> side, Fuse fuse, Current current) {
	}

	/**
	 * The fault current through the wires of a lead.
	 *
	 * @param supply the qualified name of the supply
	 * @param size the size of the wires
	 */
	public record ThroughLead(String supply, ConductorSize size, Current current) {
	}
}
