/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.DataPath;
import hullwright.analysis.data.WantedData;
import hullwright.network.data.MessageUse;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a device cannot work without comes less often than the device needs it.
 */
public final class TooSlow implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/too-slow", "Data come too slowly", Severity.WARNING,
				"{device} needs {message} at least every {limit}, and from {source} it comes every {interval}",
				"what the catalog says that the device needs");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		List<Finding> findings = new ArrayList<>();
		for (WantedData want : boat.figures().data().wants()) {
			if (want.verdict() == WantedData.Verdict.TOO_SLOW) {
				fastest(want).ifPresent(path -> findings.add(boat.finding(onBoard.origin(want.device()))
						.key(want.wanting().uses().stream().map(MessageUse::toString).collect(Collectors.joining(" or ")))
						.value("device", InWords.name(want.device()))
						.value("message", InWords.anyOf(want.wanting().uses()))
						.value("limit", want.wanting().atLeastEvery().orElseThrow())
						.value("source", InWords.name(path.source().device()))
						.value("interval", path.timing().every().orElseThrow())
						.build()));
			}
		}
		return findings;
	}

	private static Optional<DataPath> fastest(WantedData want) {
		return want.paths().stream().filter(path -> path.timing().every().isPresent())
				.min(Comparator.comparing(path -> path.timing().every().orElseThrow().seconds()));
	}
}
