/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.WantedData;
import hullwright.analysis.traffic.DevicesOnNetwork;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;

/**
 * Nobody on board tells what a device cannot work without: one finding for each message that is missing, whoever needs it.
 */
public final class SourceMissing implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/source-missing", "Nobody tells what a device needs", Severity.ERROR,
				"nobody on board tells {message}, which {devices} cannot work without",
				"common practice: what a device declares that it needs is told by some device on board");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return LackingDevices.with(boat, WantedData.Verdict.NO_SOURCE).stream().map(lacking -> {
			Finding.Builder finding = lacking.finding(boat);
			boat.boat().networks().stream()
					.filter(network -> DevicesOnNetwork.of(network).all().stream().anyMatch(device -> device.name().equals(lacking.devices().get(0))))
					.findFirst().ifPresent(network -> TellingDevices.of(boat, network, lacking.first()).forEach(finding::fix));
			return finding
					.value("message", InWords.anyOf(lacking.uses()))
					.value("devices", InWords.names(lacking.devices()))
					.build();
		}).toList();
	}
}
