/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.SectionReading;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.PlacesInText;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A part that breaks the supply conductor leaves devices on a stretch that no supply enters, while the rest of their network is fed.
 */
public final class SectionWithoutSupply implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/section-without-supply", "Section without supply", Severity.ERROR,
				"no supply enters the stretch of supply conductor that {device} is on; devices on it: {devices}",
				"public network pages of a display maker (N2-B) and DeviceNet media handbook, p. 1-17: where the supply conductor is broken, each side has a supply of its own")
				.silencedBy("connectors/adapter-without-power");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			List<SectionReading> sections = SupplySections.of(boat, network);
			if (sections.stream().anyMatch(each -> !each.supplies().isEmpty())) {
				sections.stream().filter(each -> each.supplies().isEmpty()).forEach(section -> {
					Origin first = places.of(section.devices().get(0));
					Finding.Builder finding = boat.finding(first)
							.value("device", first.simpleName())
							.value("devices", section.devices().size())
							.covers(section.devices());
					FeedThroughPort.of(boat, network, partsBeside(network, section)).forEach(finding::fix);
					findings.add(finding.build());
				});
			}
		}
		return findings;
	}

	/** The parts whose ports the devices of a stretch hang on. */
	private static Set<String> partsBeside(Network network, SectionReading section) {
		return network.drops().stream().filter(drop -> drop.device().filter(device -> section.devices().contains(device.name())).isPresent())
				.map(drop -> drop.from().part()).collect(Collectors.toSet());
	}
}
