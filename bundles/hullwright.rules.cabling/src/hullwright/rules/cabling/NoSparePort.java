/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.network.Backbone;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.NetworkKind;
import hullwright.network.PartsOnOffer;
import hullwright.network.part.Tee;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.ReplacePart;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All ports of a network are taken, so that a later device has nowhere to go.
 */
public final class NoSparePort implements BoatRule {

	private static final String SOURCE = "owner's manual of a control system (N2-J), p. 30: leave one or two spare tees";
	private static final Parameter DEVICES = new Parameter("devices", 6,
			"from how many devices on a network is expected to have a spare port", "common practice: a small network is not meant");

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/no-spare-port", "No spare port", Severity.ADVICE,
				"all {count} ports of network {network} are taken: for the next device its backbone must be parted", SOURCE).with(DEVICES);
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		int least = boat.parameter("devices", Integer.class);
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			boolean prepared = network.drops().stream().anyMatch(drop -> drop.device().isEmpty());
			List<Fitting> tees = tees(network);
			if (network.kind() == NetworkKind.INSTRUMENT_BUS && !tees.isEmpty() && !prepared && boat.figures().sparePortsOf(network).isEmpty()
					&& boat.figures().nodesOf(network) >= least) {
				Finding.Builder finding = boat.finding(network.origin())
						.value("count", tees.stream().mapToInt(tee -> ((Tee) tee.part()).ports().size()).sum())
						.value("network", network.origin().simpleName());
				larger(boat, tees).ifPresent(finding::fix);
				findings.add(finding.build());
			}
		}
		return findings;
	}

	private static List<Fitting> tees(Network network) {
		return network.backbones().stream().map(Backbone::elements).flatMap(List::stream).filter(Fitting.class::isInstance).map(Fitting.class::cast)
				.filter(fitting -> fitting.part() instanceof Tee).toList();
	}

	/** The first tee or block in the dry that is made with more ports, too. */
	private static Optional<Fix> larger(BoatUnderCheck boat, List<Fitting> tees) {
		return tees.stream().filter(tee -> ExposedPorts.waterAt(boat, tee.details().place()).isEmpty())
				.flatMap(tee -> larger(boat.boat().partsOnOffer(), (Tee) tee.part()).map(other -> new Fix("Replace " + tee.origin().simpleName() + " by a "
						+ other.identity().name(), Fix.Reach.DESIGN, List.of(new ReplacePart(tee.origin(), tee.part().identity(), other.identity())))).stream())
				.findFirst();
	}

	private static Optional<Tee> larger(PartsOnOffer offer, Tee tee) {
		return offer.of(Tee.class).stream()
				.filter(other -> other.ends().equals(tee.ends()) && other.ports().size() > tee.ports().size())
				.filter(other -> other.ports().entrySet().containsAll(tee.ports().entrySet()))
				.min(Comparator.comparing(other -> other.ports().size()));
	}
}
