/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.line.DropLength;
import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.layout.Way;
import hullwright.network.part.DeviceModel;
import hullwright.quantity.Length;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.Remove;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A cable lies between a port and the lead of a device, though the lead reaches.
 */
public final class LeadAndNeedlessCable implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/lead-and-needless-cable", "Needless cable before a lead", Severity.ADVICE,
				"{device} brings a lead of {lead}, which reaches {port} without the {cable} of cable between",
				"public cabling guide of a cable maker (N2-A), section 1.4: cable and lead count together in the length of the drop; common practice: no joint that is not needed");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Drop drop : network.drops()) {
				DropLength length = boat.figures().lengthOf(drop);
				if (length.lead().si() > 0 && onlyCable(drop) && fits(boat, network, drop) && leadReaches(network, drop, length)) {
					Finding.Builder finding = boat.finding(drop.origin())
							.value("device", drop.origin().simpleName())
							.value("lead", length.lead())
							.value("port", Origin.nowhere(drop.from().part()).simpleName() + "." + drop.from().port().orElse(0))
							.value("cable", length.cable());
					if (drop.legs().size() == 1) {
						finding.fix(new Fix("Leave the cable out", Fix.Reach.DESIGN, List.of(new Remove(drop.legs().get(0).origin()))));
					}
					findings.add(finding.build());
				}
			}
		}
		return findings;
	}

	private static boolean onlyCable(Drop drop) {
		return !drop.legs().isEmpty() && drop.legs().stream().allMatch(CableRun.class::isInstance);
	}

	private static boolean fits(BoatUnderCheck boat, Network network, Drop drop) {
		Optional<DeviceModel.Lead> lead = drop.device().flatMap(device -> device.model().lead());
		return boat.figures().jointsOf(network).stream()
				.filter(joint -> joint.run().equals(drop.origin()) && joint.position() == 0)
				.findFirst().flatMap(joint -> joint.near().connector())
				.flatMap(port -> lead.flatMap(DeviceModel.Lead::connector).filter(port::mates)).isPresent();
	}

	/** Sure only where the text says how far it is, or that both are at one place. */
	private static boolean leadReaches(Network network, Drop drop, DropLength length) {
		List<Optional<Length>> ways = drop.legs().stream().map(leg -> ((CableRun) leg).way().map(Way::length)).toList();
		if (ways.stream().allMatch(Optional::isPresent)) {
			return !ways.stream().map(Optional::get).reduce(Length.ZERO, Length::plus).exceeds(length.lead());
		}
		Optional<String> device = drop.device().flatMap(FittedDevice::place);
		return device.isPresent() && device.equals(placeOf(network, drop.from().part()));
	}

	private static Optional<String> placeOf(Network network, String part) {
		return network.backbones().stream().flatMap(backbone -> backbone.elements().stream())
				.filter(element -> element.name().equals(part)).filter(Fitting.class::isInstance).map(Fitting.class::cast)
				.findFirst().flatMap(fitting -> fitting.details().place());
	}
}
