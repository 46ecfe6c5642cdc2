/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.SectionReading;
import hullwright.network.Origin;
import hullwright.network.PlacesInText;
import hullwright.quantity.Voltage;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * More voltage is lost on the way through a network than cabling guides allow.
 */
public final class DropOverGuidance implements BoatRule {

	private static final String BATTERY = "public cabling guide of a cable maker (N2-A), section 3.7, kit manual (N2-D), installation guide (N2-C): 1.5 V with a battery";
	private static final String REGULATED = "public installation guide (N2-C), section 3.2: 3.0 V with an isolated, regulated supply of 13.8 V";
	private static final Parameter FROM_BATTERY = new Parameter("battery", new Voltage(1.5), "what may be lost on the way from a battery", BATTERY);
	private static final Parameter FROM_REGULATED = new Parameter("regulated", new Voltage(3), "what may be lost on the way from an isolated converter", REGULATED);

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/drop-over-guidance", "Voltage drop over the guidance", Severity.WARNING,
				"{drop} are lost on the way to {device}; {limit} are allowed for", BATTERY).with(FROM_BATTERY, FROM_REGULATED)
				.silencedBy("power/voltage-low", "power/cannot-be-fed");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		Map<String, Finding> findings = new LinkedHashMap<>();
		for (StateFlow each : StateFlow.lowest(boat)) {
			for (SectionReading section : each.flow().sections()) {
				boolean regulated = !section.supplies().isEmpty() && section.supplies().stream().allMatch(supply -> SourceChain.of(boat.boat(), supply).isIsolated());
				Voltage limit = boat.parameter(regulated ? "regulated" : "battery", Voltage.class);
				section.drop().filter(drop -> drop.exceeds(limit)).ifPresent(drop -> findings.merge(section.devices().get(0),
						finding(boat, places.of(section.weakest().orElseThrow()), section, drop, limit, regulated), DropOverGuidance::worse));
			}
		}
		return List.copyOf(findings.values());
	}

	private static Finding finding(BoatUnderCheck boat, Origin weakest, SectionReading section, Voltage drop, Voltage limit, boolean regulated) {
		return boat.finding(weakest)
				.value("drop", drop)
				.value("device", weakest.simpleName())
				.value("limit", limit)
				.source(regulated ? REGULATED : BATTERY)
				.covers(section.devices())
				.build();
	}

	private static Finding worse(Finding known, Finding next) {
		return next.distanceFromLimit() > known.distanceFromLimit() ? next : known;
	}
}
