/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.PartsOnOffer;
import hullwright.network.part.Part;
import hullwright.network.part.Tee;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.ReplacePart;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
					if (!hasPort(part, number)) {
						Finding.Builder finding = boat.finding(claim.origin()).key("port " + number)
								.value("what", claim.kind())
								.value("part", claim.partName())
								.value("port", number)
								.value("type", part.identity().name())
								.value("ports", ports(part));
						FreePort.of(boat, network, claim.port().part())
								.ifPresent(free -> finding.fix(FreePort.fix(claim.origin(), claim.partName() + "." + number, free)));
						if (part instanceof Tee tee) {
							withMorePorts(boat.boat().partsOnOffer(), claim.part().get(), tee, number).ifPresent(finding::fix);
						}
						findings.add(finding.build());
					}
				}
			}
		}
		return findings;
	}

	private static boolean hasPort(Part part, int number) {
		return part instanceof Tee tee && tee.ports().containsKey(number);
	}

	/** The tee or block with the fewest ports that has this one, too, and the same connectors. */
	private static Optional<Fix> withMorePorts(PartsOnOffer offer, Fitting fitting, Tee old, int number) {
		return offer.of(Tee.class).stream()
				.filter(other -> other.ends().equals(old.ends()) && other.ports().containsKey(number) && other.ports().entrySet().containsAll(old.ports().entrySet()))
				.filter(other -> old.ports().containsValue(other.ports().get(number)))
				.min(Comparator.comparing(other -> other.ports().size()))
				.map(other -> new Fix("Replace " + old.identity().name() + " by " + other.identity().name(), Fix.Reach.DESIGN,
						List.of(new ReplacePart(fitting.origin(), old.identity(), other.identity()))));
	}

	private static String ports(Part part) {
		return part instanceof Tee tee && !tee.ports().isEmpty()
				? (tee.ports().size() == 1 ? "port " : "ports ") + tee.ports().keySet().stream().map(String::valueOf).collect(Collectors.joining(", "))
				: "no ports";
	}
}
