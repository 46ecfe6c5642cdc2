/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.DataProblem;
import hullwright.analysis.data.EchoLoop;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Messages come back to where they were and are told again.
 */
public final class EchoLoopOnBoard implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/echo-loop", "Messages go round", Severity.ERROR,
				"{messages} come back over {devices} to where they were and are told again, each time round once more",
				"common practice: one gateway for each kind of data and direction");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		List<Finding> findings = new ArrayList<>();
		for (EchoLoop loop : boat.figures().data().loops()) {
			Finding.Builder finding = finding(boat, onBoard, loop.devices(), loop.messages().isEmpty() ? "messages" : InWords.messages(loop.messages()));
			LeaveOut.oneOf(loop.devices(), onBoard, loop.messages()).forEach(finding::fix);
			findings.add(finding.build());
		}
		for (DataProblem problem : boat.figures().data().problems()) {
			if (problem instanceof DataProblem.TurnsIntoItself itself) {
				findings.add(finding(boat, onBoard, List.of(itself.device()), itself.use().toString()).build());
			} else if (problem instanceof DataProblem.PassesBack back) {
				findings.add(finding(boat, onBoard, List.of(back.device()), "all messages of " + InWords.name(back.carrier().name())).build());
			}
		}
		return findings;
	}

	private static Finding.Builder finding(BoatUnderCheck boat, OnBoard onBoard, List<String> devices, String messages) {
		return boat.finding(onBoard.origin(devices.get(0)))
				.key(devices.stream().map(InWords::name).collect(Collectors.joining(" ")) + (devices.size() == 1 ? " " + messages : ""))
				.covers(devices)
				.value("messages", messages)
				.value("devices", InWords.names(devices));
	}
}
