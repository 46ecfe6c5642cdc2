/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.traffic.BusFigures;
import hullwright.analysis.traffic.MessageResponse;
import hullwright.analysis.traffic.ResponseTime;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * Messages of a network may still be under way when they are due again, or nothing bounds how long they take.
 */
public final class LateMessages implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/late-messages", "Messages may come late", Severity.WARNING,
				"on {network} {messages} may {how}",
				"response-time analysis of Davis, Burns, Bril and Lukkien (CAN-1), 2007: a message is through before it is due again")
				.silencedBy("data/bus-load-high");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		if (!boat.figures().data().loops().isEmpty()) {
			// what goes round has no bound, and the loop is told already
			return List.of();
		}
		OnBoard onBoard = OnBoard.of(boat);
		List<Finding> findings = new ArrayList<>();
		for (BusFigures bus : boat.figures().buses()) {
			List<MessageResponse> unbounded = bus.responses().messages().stream().filter(each -> each.time() instanceof ResponseTime.Unbounded).toList();
			List<MessageResponse> late = bus.responses().messages().stream()
					.filter(each -> each.time() instanceof ResponseTime.Bounded && each.message().release().regular() && !each.isInTime()).toList();
			String network = bus.traffic().network();
			if (!unbounded.isEmpty()) {
				findings.add(finding(boat, onBoard, network, unbounded, "no bound", "wait without a bound"));
			}
			if (!late.isEmpty()) {
				findings.add(finding(boat, onBoard, network, late, "late", "still be under way when they are due again"));
			}
		}
		return findings;
	}

	private static Finding finding(BoatUnderCheck boat, OnBoard onBoard, String network, List<MessageResponse> messages, String key, String how) {
		return boat.finding(onBoard.origin(network))
				.key(key)
				.value("network", InWords.name(network))
				.value("messages", InWords.list(messages.stream()
						.map(each -> each.message().pgn().number() + " from " + InWords.name(each.message().sender())).distinct().toList()))
				.value("how", how)
				.build();
	}
}
