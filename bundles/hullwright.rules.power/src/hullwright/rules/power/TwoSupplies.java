/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.EntryReading;
import hullwright.analysis.power.SectionReading;
import hullwright.analysis.wiring.SupplyEntry;
import hullwright.network.Element;
import hullwright.network.part.Isolator;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.InsertInBackbone.Side;
import hullwright.rules.edit.InsertInBackbone;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Two supplies that can be on together feed one unbroken supply conductor.
 */
public final class TwoSupplies implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/two-supplies", "Two supplies on one conductor", Severity.ERROR,
				"{supply} feeds the same unbroken supply conductor as {other} at {otherPart}",
				"public network pages of a display maker (N2-B): more than one supply only with the supply conductor broken between them; an installation sheet (N2-K): power the network only once");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Map<SupplyEntry, Finding> findings = new LinkedHashMap<>();
		for (StateElectrics state : boat.figures().electrics().states()) {
			Set<SupplyEntry> on = state.lowest().entries().stream().filter(EntryReading::on).map(EntryReading::entry).collect(Collectors.toSet());
			for (SectionReading section : state.lowest().sections()) {
				List<SupplyEntry> together = section.places().stream().filter(on::contains).toList();
				for (int i = 1; i < together.size(); i++) {
					SupplyEntry before = together.get(i - 1);
					findings.computeIfAbsent(together.get(i), entry -> finding(boat, before, entry));
				}
			}
		}
		return List.copyOf(findings.values());
	}

	private static Finding finding(BoatUnderCheck boat, SupplyEntry before, SupplyEntry entry) {
		Finding.Builder finding = boat.finding(entry.origin())
				.key(entry.supply() + " beside " + before.supply())
				.value("supply", ShortName.of(entry.supply()))
				.value("other", ShortName.of(before.supply()))
				.value("otherPart", ShortName.of(before.part()));
		isolator(boat, entry).ifPresent(finding::fix);
		return finding.build();
	}

	/** A power isolator beside the second tap, on the side of the first, where one is on offer that mates there. */
	private static Optional<Fix> isolator(BoatUnderCheck boat, SupplyEntry entry) {
		Optional<Element> tap = boat.boat().networks().get(entry.network()).backbones().stream().flatMap(backbone -> backbone.elements().stream())
				.filter(element -> element.name().equals(entry.part())).findFirst();
		return tap.flatMap(Element::towardsStart).flatMap(open -> boat.boat().partsOnOffer().of(Isolator.class).stream()
				.filter(isolator -> isolator.breaksSupply() && isolator.joinsReturn())
				.filter(isolator -> isolator.ends().second().filter(open::mates).isPresent() || isolator.ends().first().filter(open::mates).isPresent())
				.findFirst())
				.map(isolator -> new Fix("Insert power isolator " + isolator.identity().name() + " before " + ShortName.of(entry.part()), Fix.Reach.DESIGN,
						List.of(new InsertInBackbone(tap.get().origin(), Side.BEFORE, "isolator", "split", isolator.identity()))));
	}
}
