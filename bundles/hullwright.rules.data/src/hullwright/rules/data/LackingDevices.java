/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.data.DataSource;
import hullwright.analysis.data.WantedData;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Wanting;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Devices that lack the same for the same reason: one cause, told once.
 *
 * @param uses the messages of which any one would do
 * @param devices the qualified names of the devices, in the order of the text
 * @param sources who tells such messages where the devices do not hear them
 * @param first what the first of them wants
 */
record LackingDevices(List<MessageUse> uses, List<String> devices, List<String> sources, Wanting first) {

	/** All that come to this verdict, by what they lack. */
	static List<LackingDevices> with(BoatUnderCheck boat, WantedData.Verdict verdict) {
		Map<List<MessageUse>, List<WantedData>> wants = boat.figures().data().wants().stream()
				.filter(each -> each.verdict() == verdict)
				.collect(Collectors.groupingBy(each -> each.wanting().uses(), LinkedHashMap::new, Collectors.toList()));
		return wants.entrySet().stream().map(each -> new LackingDevices(each.getKey(),
				each.getValue().stream().map(WantedData::device).distinct().toList(),
				each.getValue().stream().flatMap(want -> want.elsewhere().stream()).map(DataSource::device).distinct().toList(),
				each.getValue().get(0).wanting())).toList();
	}

	/** A finding about the first of them that speaks for the others. */
	Finding.Builder finding(BoatUnderCheck boat) {
		return boat.finding(OnBoard.of(boat).origin(devices.get(0)))
				.key(uses.stream().map(MessageUse::toString).collect(Collectors.joining(" or ")))
				.covers(devices);
	}
}
