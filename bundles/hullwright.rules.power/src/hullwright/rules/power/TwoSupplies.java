/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.EntryReading;
import hullwright.analysis.power.SectionReading;
import hullwright.analysis.wiring.SupplyEntry;
import hullwright.network.Origin;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
				.value("supply", Origin.nowhere(entry.supply()).simpleName())
				.value("other", Origin.nowhere(before.supply()).simpleName())
				.value("otherPart", Origin.nowhere(before.part()).simpleName());
		return finding.build();
	}
}
