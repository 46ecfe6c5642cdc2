/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.WantedData;
import hullwright.network.data.MessageUse;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

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
		OnBoard onBoard = OnBoard.of(boat);
		return missing(boat).entrySet().stream().map(each -> {
			List<String> devices = each.getValue();
			return boat.finding(onBoard.origin(devices.get(0)))
					.key(each.getKey().stream().map(MessageUse::toString).collect(Collectors.joining(" or ")))
					.value("message", InWords.anyOf(each.getKey()))
					.value("devices", InWords.names(devices))
					.covers(devices)
					.build();
		}).toList();
	}

	/** The devices that lack a message, by the message. */
	private static Map<List<MessageUse>, List<String>> missing(BoatUnderCheck boat) {
		return boat.figures().data().wants().stream()
				.filter(each -> each.verdict() == WantedData.Verdict.NO_SOURCE)
				.collect(Collectors.groupingBy(each -> each.wanting().uses(), LinkedHashMap::new,
						Collectors.mapping(WantedData::device, Collectors.toList())));
	}
}
