/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.ReceivedData;
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
 * A device needs something that several tell, and nothing says whose it takes.
 */
public final class SourceNotSet implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/source-not-set", "Nothing says which source is taken", Severity.ADVICE,
				"{device} cannot work without {messages}, which {sources} tell, and nothing says whose it takes",
				"common practice: where several tell the same, set whose is taken")
				.silencedBy("data/same-instance", "data/echo-loop");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		List<Finding> findings = new ArrayList<>();
		for (WantedData want : boat.figures().data().wants()) {
			List<ReceivedData> open = want.received().stream()
					.filter(each -> each.choice() == ReceivedData.Choice.NOT_TOLD && each.timing().every().isPresent()).toList();
			if (!open.isEmpty()) {
				List<String> sources = open.stream().flatMap(each -> each.tellers().stream()).distinct().toList();
				List<MessageUse> uses = open.stream().map(ReceivedData::use).distinct().toList();
				List<String> whole = sources.stream().filter(source -> open.stream().allMatch(each -> each.tellers().contains(source))).toList();
				Finding.Builder finding = boat.finding(onBoard.origin(want.device()));
				ListenTo.oneOf(whole, onBoard.origin(want.device()), uses).forEach(finding::fix);
				findings.add(finding
						.key(want.wanting().uses().stream().map(MessageUse::toString).collect(Collectors.joining(" or ")))
						.value("device", InWords.name(want.device()))
						.value("messages", InWords.anyOf(uses))
						.value("sources", InWords.names(sources))
						.build());
			}
		}
		return findings;
	}
}
