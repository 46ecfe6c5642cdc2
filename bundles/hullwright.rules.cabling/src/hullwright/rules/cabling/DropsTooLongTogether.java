/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.Stub;
import hullwright.network.Network;
import hullwright.quantity.Length;
import hullwright.rules.Band;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;
import java.util.Optional;

/**
 * All drops of a network together are longer than the bus bears.
 */
public final class DropsTooLongTogether implements BoatRule {

	private static final Band LIMIT = new Band(Severity.ERROR, new Length(78),
			"public cabling guide of a cable maker (N2-A), section 1.3, and coupler maker's table (CAN-4): 78 m of drops at 250 kbit/s");

	@Override
	public RuleDescription description() {
		return RuleDescription.banded("cabling/drops-too-long-together", "Drops too long together",
				"the {drops} drops of {network} are {length} long together; the limit is {limit}", LIMIT);
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return boat.boat().networks().stream().flatMap(network -> finding(boat, network).stream()).toList();
	}

	private static Optional<Finding> finding(BoatUnderCheck boat, Network network) {
		List<Stub> stubs = boat.figures().stubsOf(network);
		Length together = stubs.stream().map(Stub::total).reduce(Length.ZERO, Length::plus);
		return boat.bandOf(together).map(band -> boat.finding(network.origin(), band)
				.value("drops", network.drops().size())
				.value("network", network.origin().simpleName())
				.value("length", together)
				.build());
	}
}
