/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.DoubledData;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The data of one source are told twice on one carrier, by different devices.
 */
public final class ToldTwice implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/told-twice", "The same data told twice", Severity.WARNING,
				"{tellers} tell the same {messages} on {carrier}, as if there were two sources",
				"common practice: one gateway for each kind of data and direction").silencedBy("data/echo-loop");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		return boat.figures().data().doubled().stream().map(doubled -> finding(boat, onBoard, doubled)).toList();
	}

	private static Finding finding(BoatUnderCheck boat, OnBoard onBoard, DoubledData doubled) {
		List<String> tellers = doubled.tellers();
		Finding.Builder finding = boat.finding(onBoard.origin(tellers.get(tellers.size() - 1)));
		LeaveOut.oneOf(tellers, onBoard, doubled.messages()).forEach(finding::fix);
		return finding
				.key(tellers.stream().limit(tellers.size() - 1).map(InWords::name).collect(Collectors.joining(" ")) + " on "
						+ InWords.name(doubled.carrier().name()))
				.covers(tellers)
				.value("tellers", InWords.names(tellers))
				.value("messages", InWords.messages(doubled.messages()))
				.value("carrier", InWords.name(doubled.carrier().name()))
				.build();
	}
}
