/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.DataSource;
import hullwright.analysis.data.WantedData;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * A device needs a message, and what reaches it is an obsolete one whose place that has taken.
 */
public final class ObsoleteMessage implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/obsolete-message", "Only the obsolete message is told", Severity.WARNING,
				"{device} needs {message}; all that comes is {obsolete} from {sources}, which is obsolete",
				"open dataset of PGNs of CANboat (PGN-A) and the lists of the open NMEA 2000 library for C++ (PGN-B), which call messages obsolete");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		List<Finding> findings = new ArrayList<>();
		for (WantedData want : boat.figures().data().wants()) {
			if (want.verdict() == WantedData.Verdict.ONLY_OBSOLETE) {
				String message = InWords.anyOf(want.wanting().uses());
				findings.add(boat.finding(onBoard.origin(want.device()))
						.key(InWords.messages(want.wanting().uses()))
						.value("device", InWords.name(want.device()))
						.value("message", message)
						.value("sources", InWords.names(want.elsewhere().stream().map(DataSource::device).toList()))
						.value("obsolete", InWords.messages(want.elsewhere().stream().map(DataSource::use).toList()))
						.build());
			}
		}
		return findings;
	}
}
