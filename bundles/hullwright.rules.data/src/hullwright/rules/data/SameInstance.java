/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.SeveralSources;
import hullwright.network.Origin;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetProperty;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Devices tell the same message with the same data instance, so that nothing tells their data apart: one finding for the devices,
 * whatever they tell.
 */
public final class SameInstance implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("data/same-instance", "Two sources with one data instance", Severity.WARNING,
				"{devices} all tell {messages} with data instance {instance}, so that nothing tells them apart",
				"glossary of the open NMEA 2000 library for C++ (PGN-B): one message with one instance from two devices is a conflict");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		OnBoard onBoard = OnBoard.of(boat);
		Map<List<String>, List<SeveralSources>> byDevices = boat.figures().data().shared().stream().filter(SeveralSources::sameKey)
				.collect(Collectors.groupingBy(SeveralSources::devices, LinkedHashMap::new, Collectors.toList()));
		return byDevices.entrySet().stream().map(each -> {
			List<String> devices = each.getKey();
			List<SeveralSources> shared = each.getValue();
			return boat.finding(onBoard.origin(devices.get(devices.size() - 1)))
					.key(devices.stream().limit(devices.size() - 1).map(InWords::name).collect(Collectors.joining(" ")))
					.covers(devices)
					.value("devices", InWords.names(devices))
					.value("messages", InWords.messages(shared.stream().map(SeveralSources::use).toList()))
					.value("instance", InWords.list(shared.stream().map(one -> String.valueOf(one.instance().orElseThrow())).distinct().toList()))
					.fix(ofItsOwn(onBoard.origin(devices.get(devices.size() - 1)), shared))
					.build();
		}).toList();
	}

	/** The last of them gets the next number; whether that is free is found out when the fix is tried. */
	private static Fix ofItsOwn(Origin device, List<SeveralSources> shared) {
		int next = shared.stream().mapToInt(each -> each.instance().orElseThrow()).max().orElse(0) + 1;
		return new Fix("Set " + device.simpleName() + " to instance " + next, Fix.Reach.DESIGN,
				List.of(new SetProperty(device, "instance", String.valueOf(next))));
	}
}
