/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.BreakingCurrent;
import hullwright.network.PlacesInText;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A fuse or breaker is asked to break more than it can.
 */
public final class FuseCannotBreak implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/fuse-cannot-break", "Short circuit beyond what the fuse can break", Severity.WARNING,
				"a short circuit right behind the fuse of {owner} is up to {asked}; it can break {limit}",
				"ABYC E-11 as quoted on public pages: interrupting capacity after the bank; the catalog's figure decides");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		Map<String, Finding> findings = new LinkedHashMap<>();
		for (StateElectrics state : boat.figures().electrics().states()) {
			state.breaking().stream().filter(BreakingCurrent::isExceeded).forEach(each -> findings.putIfAbsent(each.owner(), boat.finding(places.of(each.owner()))
					.value("owner", ShortName.of(each.owner()))
					.value("asked", each.asked().orElseThrow())
					.value("limit", each.able().orElseThrow())
					.build()));
		}
		return List.copyOf(findings.values());
	}
}
