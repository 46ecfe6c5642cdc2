/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.WantedData;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;

/**
 * Somebody tells what a device cannot work without, but it does not reach the device.
 */
public final class SourceNotReached implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/source-not-reached", "What a device needs does not reach it", Severity.ERROR,
				"{message}, which {devices} cannot work without, is told by {sources} and does not get there",
				"common practice: a gateway or bridge on the way passes what a device declares that it needs");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return LackingDevices.with(boat, WantedData.Verdict.NOT_REACHED).stream().map(lacking -> lacking.finding(boat)
				.value("message", InWords.anyOf(lacking.uses()))
				.value("devices", InWords.names(lacking.devices()))
				.value("sources", InWords.names(lacking.sources()))
				.build()).toList();
	}
}
