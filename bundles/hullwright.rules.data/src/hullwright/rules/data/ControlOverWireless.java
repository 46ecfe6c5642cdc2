/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.Carrier;
import hullwright.analysis.data.DataPath;
import hullwright.analysis.data.WantedData;
import hullwright.network.data.MessageUse;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What a device cannot work without reaches it by wireless only.
 */
public final class ControlOverWireless implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/control-over-wireless", "Control over a wireless hop", Severity.WARNING,
				"{device} cannot work without {message}, and gets it over wireless {hop} only",
				"common practice: a wireless hop is for convenience, not for control or safety");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		List<Finding> findings = new ArrayList<>();
		for (WantedData want : boat.figures().data().wants()) {
			List<String> hops = want.paths().stream().flatMap(path -> path.legs().stream()).map(DataPath.Leg::carrier)
					.filter(each -> each.kind() == Carrier.Kind.WIRELESS).map(Carrier::name).distinct().toList();
			if (!want.paths().isEmpty() && want.paths().stream().allMatch(ControlOverWireless::isByWireless)) {
				findings.add(boat.finding(onBoard.origin(want.device()))
						.key(want.wanting().uses().stream().map(MessageUse::toString).collect(Collectors.joining(" or ")))
						.value("device", InWords.name(want.device()))
						.value("message", InWords.anyOf(want.wanting().uses()))
						.value("hop", InWords.names(hops))
						.build());
			}
		}
		return findings;
	}

	private static boolean isByWireless(DataPath path) {
		return path.legs().stream().anyMatch(leg -> leg.carrier().kind() == Carrier.Kind.WIRELESS);
	}
}
