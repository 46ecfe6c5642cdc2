/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.DataFlow;
import hullwright.analysis.data.DataProblem;
import hullwright.analysis.data.WantedData;
import hullwright.network.data.Taking;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A device is set to listen to one that does not tell it what it is to take.
 */
public final class SetSourceSilent implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/set-source-silent", "Set source is silent", Severity.ERROR,
				"{device} is set to take {message} from {source}, which does not tell it there",
				"common practice: a device that is set to one source takes no other");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		Map<String, Finding> findings = new LinkedHashMap<>();
		for (DataProblem problem : boat.figures().data().problems()) {
			if (problem instanceof DataProblem.TakesFromSilent silent) {
				tell(boat, onBoard, silent.device(), new Taking(silent.use(), silent.from()), findings);
			}
		}
		for (WantedData want : boat.figures().data().wants()) {
			if (want.verdict() == WantedData.Verdict.TAKEN_SOURCE_SILENT) {
				onBoard.device(want.device()).stream().flatMap(device -> device.settings().takes().stream())
						.filter(taking -> want.wanting().uses().stream().anyMatch(use -> use.covers(taking.use())))
						.forEach(taking -> tell(boat, onBoard, want.device(), taking, findings));
			}
		}
		return List.copyOf(findings.values());
	}

	private static void tell(BoatUnderCheck boat, OnBoard onBoard, String device, Taking taking, Map<String, Finding> findings) {
		String key = taking.use() + " from " + InWords.name(taking.device());
		findings.computeIfAbsent(device + " " + key, none -> {
			Finding.Builder finding = boat.finding(onBoard.origin(device));
			ListenTo.oneOf(tellers(boat, device, taking), onBoard.origin(device), List.of(taking.use())).forEach(finding::fix);
			return finding.key(key)
					.value("device", InWords.name(device))
					.value("message", InWords.message(taking.use()))
					.value("source", InWords.name(taking.device()))
					.build();
		});
	}

	/** Who tells the device what it is to take. */
	private static List<String> tellers(BoatUnderCheck boat, String device, Taking taking) {
		DataFlow data = boat.figures().data();
		return Stream.concat(data.wants().stream().filter(want -> want.device().equals(device)).flatMap(want -> want.received().stream()),
				data.shows().stream().filter(shown -> shown.device().equals(device)).flatMap(shown -> shown.received().stream()))
				.filter(each -> taking.use().covers(each.use())).flatMap(each -> each.tellers().stream()).distinct().toList();
	}
}
