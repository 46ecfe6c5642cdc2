/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.DataSource;
import hullwright.analysis.data.WantedData;
import hullwright.network.FittedDevice;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Pgn;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A device needs a proprietary message, and only devices of other makers tell one of that number: what it says, each maker decides.
 */
public final class ProprietaryBetweenMakers implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/proprietary-between-makers", "Proprietary message of another maker", Severity.WARNING,
				"{device} by {maker} needs {message}, which comes from {sources} by {other} only: what it says, each maker decides",
				"open dataset of PGNs of CANboat (PGN-A): 61184, 65280 to 65535, 126720 and 130816 to 131071 are the makers' own");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		List<Finding> findings = new ArrayList<>();
		for (WantedData want : boat.figures().data().wants()) {
			Optional<String> own = maker(onBoard, want.device());
			List<MessageUse> uses = want.wanting().uses();
			List<String> sources = want.sources().stream().map(DataSource::device).distinct().toList();
			boolean known = sources.stream().allMatch(each -> maker(onBoard, each).isPresent());
			if (own.isPresent() && !sources.isEmpty() && known && uses.stream().allMatch(ProprietaryBetweenMakers::isProprietary)
					&& sources.stream().noneMatch(each -> maker(onBoard, each).equals(own))) {
				findings.add(boat.finding(onBoard.origin(want.device()))
						.key(InWords.messages(uses))
						.value("device", InWords.name(want.device()))
						.value("maker", own.get())
						.value("message", InWords.anyOf(uses))
						.value("sources", InWords.names(sources))
						.value("other", InWords.list(sources.stream().flatMap(each -> maker(onBoard, each).stream()).distinct().toList()))
						.build());
			}
		}
		return findings;
	}

	private static boolean isProprietary(MessageUse use) {
		return use.message() instanceof Pgn pgn && pgn.isProprietary();
	}

	private static Optional<String> maker(OnBoard onBoard, String device) {
		return onBoard.device(device).map(FittedDevice::model).flatMap(model -> model.maker());
	}
}
