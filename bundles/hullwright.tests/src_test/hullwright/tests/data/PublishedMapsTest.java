/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.network.data.Message;
import hullwright.network.data.Pgn;
import hullwright.network.data.Turning;
import hullwright.network.part.DeviceModel;
import hullwright.testkit.BoatText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * What the gateways of the standard catalog turn into what, against tables of sentence formatters and PGNs: an operator's manual of
 * a repeater display, pp. 9-10 (GW-A), a gateway's user manual, rev 1.2, appendix A (GW-B), the example program of an open PGN
 * database (PGN-B), and for the rest common practice. A formatter that stands for several PGNs at once may come from any of them.
 */
class PublishedMapsTest {

	private static final Map<String, Set<Integer>> PUBLISHED = Map.ofEntries(
			Map.entry("DPT", Set.of(128267)), Map.entry("DBT", Set.of(128267)), Map.entry("VHW", Set.of(128259, 127250, 130577)),
			Map.entry("VBW", Set.of(128259)), Map.entry("VLW", Set.of(128275)), Map.entry("VTG", Set.of(129026, 128259, 130577)),
			Map.entry("GGA", Set.of(129029)), Map.entry("GNS", Set.of(129029)), Map.entry("GLL", Set.of(129025)),
			Map.entry("RMC", Set.of(129025, 129026, 129029, 126992, 129033, 127258)), Map.entry("ZDA", Set.of(126992, 129033)),
			Map.entry("GSA", Set.of(129539)), Map.entry("GSV", Set.of(129540)), Map.entry("MWV", Set.of(130306)), Map.entry("VWR", Set.of(130306)),
			Map.entry("VWT", Set.of(130306)), Map.entry("MWD", Set.of(130306)), Map.entry("HDT", Set.of(127250)), Map.entry("HDG", Set.of(127250, 127258)),
			Map.entry("HDM", Set.of(127250)), Map.entry("ROT", Set.of(127251)), Map.entry("RSA", Set.of(127245)), Map.entry("RPM", Set.of(127488)),
			Map.entry("MTW", Set.of(130310, 130311, 130312, 130316)), Map.entry("XTE", Set.of(129283)), Map.entry("APB", Set.of(129283, 129284, 129285)),
			Map.entry("RMB", Set.of(129283, 129284, 129285)), Map.entry("BWC", Set.of(129283, 129284, 129285)),
			Map.entry("VDM", Set.of(129038, 129039, 129040, 129041, 129794, 129809, 129810, 129793, 129798, 129801, 129802)));

	private static List<DeviceModel> gateways() {
		return BoatText.boat("import \"standard:serial\"\nseries Skerry \"Invented\" { }").partsOnOffer().of(DeviceModel.class).stream()
				.filter(each -> !each.data().turns().isEmpty()).toList();
	}

	@Test
	void everyMapOfTheCatalogIsPublished() {
		List<String> unknown = new ArrayList<>();
		Set<String> seen = new TreeSet<>();
		for (DeviceModel gateway : gateways()) {
			for (Turning turning : gateway.data().turns()) {
				List<Message> from = turning.from().stream().map(each -> each.message()).toList();
				List<Message> to = turning.to().stream().map(each -> each.message()).toList();
				List<Message> sentences = from.get(0) instanceof Pgn ? to : from;
				for (Message message : from.get(0) instanceof Pgn ? from : to) {
					boolean published = sentences.stream().anyMatch(each -> PUBLISHED.getOrDefault(each.name(), Set.of()).contains(((Pgn) message).number()));
					seen.add(sentences.get(0).name());
					if (!published) {
						unknown.add(gateway.identity().name() + ": " + from.get(0).name() + " to " + to.get(0).name());
					}
				}
			}
		}
		assertEquals(List.of(), unknown);
		assertTrue(seen.size() >= 15, seen + "");
	}
}
