/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.network.CableRun;
import hullwright.network.Origin;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.SeriesRule;
import hullwright.rules.SeriesUnderCheck;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A drop is fitted for a device that is to come, and no boat of the series ever gets one there.
 */
public final class PreparedForNothing implements SeriesRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("series/prepared-for-nothing", "Prepared for nothing that is offered", Severity.ADVICE,
				"{drop} is prepared for a device, and no option and no hull brings one",
				"common practice: cable that is fitted ahead has a device that may follow");
	}

	@Override
	public List<Finding> check(SeriesUnderCheck series) {
		if (!series.isComplete()) {
			return List.of();
		}
		Map<String, Origin> waiting = new LinkedHashMap<>();
		Set<String> served = new HashSet<>();
		series.boats().flatMap(boat -> boat.networks().stream()).flatMap(network -> network.drops().stream()).forEach(drop -> {
			if (drop.device().isPresent()) {
				served.add(drop.name());
			} else if (drop.legs().stream().anyMatch(CableRun.class::isInstance)) {
				waiting.putIfAbsent(drop.name(), drop.origin());
			}
		});
		List<Finding> findings = new ArrayList<>();
		waiting.forEach((name, origin) -> {
			if (!served.contains(name)) {
				findings.add(series.finding(origin).value("drop", origin.simpleName()).build());
			}
		});
		return findings;
	}
}
