/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.network.Network;
import hullwright.network.part.Part;
import hullwright.network.part.Tee;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Something is plugged into a port that the part does not have: another part was taken, or a number is wrong.
 */
public final class PortDoesNotExist implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/port-does-not-exist", "Port does not exist", Severity.ERROR,
				"{what} goes to {part}.{port}, and {part}, a {type}, has {ports}",
				"the catalog: the ports that it gives the part");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (PortClaim claim : PortClaim.of(network)) {
				if (claim.part().isPresent() && claim.port().port().isPresent()) {
					Part part = claim.part().get().part();
					int number = claim.port().port().get();
					if (!(part instanceof Tee tee) || !tee.ports().containsKey(number)) {
						findings.add(boat.finding(claim.origin()).key("port " + number)
								.value("what", claim.kind())
								.value("part", claim.partName())
								.value("port", number)
								.value("type", part.identity().name())
								.value("ports", ports(part))
								.build());
					}
				}
			}
		}
		return findings;
	}

	private static String ports(Part part) {
		return part instanceof Tee tee && !tee.ports().isEmpty()
				? (tee.ports().size() == 1 ? "port " : "ports ") + tee.ports().keySet().stream().map(String::valueOf).collect(Collectors.joining(", "))
				: "no ports";
	}
}
