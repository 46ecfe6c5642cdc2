/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.FuseReading;
import hullwright.network.Origin;
import hullwright.network.PlacesInText;
import hullwright.quantity.Ratio;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A fuse or breaker of a network leaves less than the usual reserve for what the owner adds later.
 */
public final class ReserveUsedUp implements BoatRule {

	private static final Parameter RESERVE = new Parameter("reserve", new Ratio(0.2), "which part of a fuse's rating is kept for growth", "common practice: 20 %");

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/reserve-used-up", "No reserve for growth", Severity.ADVICE,
				"the fuse of {owner} carries {current} of its {rating}; {reserve} are to stay free for what is added later",
				"common practice: load a fuse to 80 % at most").with(RESERVE).silencedBy("power/fuse-too-small");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Ratio reserve = boat.parameter("reserve", Ratio.class);
		PlacesInText places = new PlacesInText(boat.boat());
		Set<String> feeding = new HashSet<>();
		boat.figures().electrics().wiring().entries().forEach(entry -> feeding.addAll(List.of(entry.supply(), entry.part())));
		Map<String, Finding> findings = new LinkedHashMap<>();
		for (StateFlow each : StateFlow.lowest(boat)) {
			for (FuseReading fuse : each.flow().fuses()) {
				if (feeding.contains(fuse.owner()) && fuse.current().si() > fuse.fuse().rating().si() * (1 - reserve.si())) {
					Origin owner = places.of(fuse.owner());
					findings.putIfAbsent(fuse.owner(), boat.finding(owner)
							.value("owner", owner.simpleName())
							.value("current", fuse.current())
							.value("rating", fuse.fuse().rating())
							.value("reserve", reserve)
							.build());
				}
			}
		}
		return List.copyOf(findings.values());
	}
}
