/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;

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
		return boat.figures().data().doubled().stream().map(doubled -> boat.finding(onBoard.origin(doubled.tellers().get(doubled.tellers().size() - 1)))
				.key(InWords.name(doubled.carrier().name()))
				.covers(doubled.tellers())
				.value("tellers", InWords.names(doubled.tellers()))
				.value("messages", InWords.messages(doubled.messages()))
				.value("carrier", InWords.name(doubled.carrier().name()))
				.build()).toList();
	}
}
