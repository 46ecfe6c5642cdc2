/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.wiring.SparePort;
import hullwright.network.Network;
import hullwright.network.PartsOnOffer;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.AddCap;
import hullwright.rules.edit.EditIntent;
import hullwright.rules.edit.Fix;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Spare ports have no cap in places where water gets at them: one finding for all those of a network.
 */
public final class SparePortOpen implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/spare-port-open", "Spare port without a cap", Severity.WARNING,
				"no cap on {ports} of network {network}, where it is {zone}",
				"old leaflet of a small network (N2-K): spare ports are capped against corrosion; owner's manual of a control system (N2-J): with a cap, never with a terminator");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			ExposedPorts.of(boat, network).ifPresent(exposed -> findings.add(finding(boat, exposed)));
		}
		return findings;
	}

	private static Finding finding(BoatUnderCheck boat, ExposedPorts exposed) {
		Network network = exposed.network();
		String labels = exposed.ports().stream().map(SparePort::label).collect(Collectors.joining(", "));
		Finding.Builder finding = boat.finding(network.origin().shownAt(exposed.ports().get(0).part().origin()))
				.value("ports", (exposed.ports().size() == 1 ? "spare port " : "spare ports ") + labels)
				.value("network", network.origin().simpleName())
				.value("zone", exposed.zones().stream().map(zone -> zone.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(" or ")));
		List<EditIntent> caps = exposed.ports().stream().flatMap(port -> cap(boat.boat().partsOnOffer(), network, port).stream()).toList();
		if (caps.size() == exposed.ports().size()) {
			finding.fix(new Fix("Cap " + labels, Fix.Reach.DESIGN, caps));
		}
		return finding.build();
	}

	private static Optional<EditIntent> cap(PartsOnOffer offer, Network network, SparePort port) {
		return port.connector().flatMap(open -> MatingPart.cap(offer, open)).map(cap -> new AddCap(network.origin(), port.label(), cap.identity()));
	}
}
