/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.data;

import static hullwright.tests.data.BusText.network;
import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.analysis.data.DataFlow;
import hullwright.analysis.data.WantedData;
import hullwright.analysis.data.WantedData.Verdict;
import hullwright.testkit.BoatText;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Data that come close and yet do not serve: in words that nobody turns, or by an obsolete message.
 */
class LackingDataTest {

	private static final String KIT = """
			import "standard:messages"
			catalog Kit "Invented" {
			""" + BusText.HARDWARE + """
			  device sounder { port bus : f male; sends 128267 every 1 s }
			  device pilot { port bus : f male; wants 128267 at least every 500 ms }
			  device oldSounder { line out : talker, differential, 4800 baud; sends DPT every 1 s by out }
			  device oldDial { line lower : listener, isolated, 4800 baud; wants DPT at least every 2 s by lower }
			  device headingGate { port bus : f male; line lower : listener, isolated, 4800 baud; turns HDG to 127250 as magnetic by lower }
			  device gate { port bus : f male
			    line lower : listener, isolated, 4800 baud
			    line out : talker, differential, 4800 baud
			    turns DPT to 128267 by lower
			    turns 128267 to DPT at most every 2 s by out
			    turns 129025 and 129026 to RMC at most every 1 s by out
			  }
			  device oldThermometer { port bus : f male; sends 130310 every 500 ms }
			  device thermometer { port bus : f male; sends 130312 as sea every 2 s, instance settable }
			  device seaDial { port bus : f male; wants 130312 }
			}
			""";

	private static DataFlow flow(String series) {
		return DataFlow.of(BoatText.boat(KIT + "series Skerry \"Invented\" {\n" + series + "\n}"));
	}

	private static WantedData want(DataFlow flow, String device) {
		return flow.wants().stream().filter(each -> each.device().endsWith("." + device)).findFirst().orElseThrow();
	}

	@Test
	void aGatewayThatHearsTheDataButLacksTheMapIsToldApartFromASourceThatLacks() {
		String oneWay = "device x : headingGate\n device old : oldSounder\n serial line at 4800 baud { from old.out; to x.lower }\n"
				+ network("bus", "x.bus\n p : pilot");
		DataFlow flow = flow(oneWay);
		assertEquals(Verdict.NOT_TURNED, want(flow, "p").verdict());
		assertEquals(List.of("Skerry.old"), want(flow, "p").elsewhere().stream().map(each -> each.device()).toList());
		assertEquals(List.of("Skerry.x DPT 128267"),
				flow.missingMaps().stream().map(each -> each.gateway() + " " + each.heard().orElseThrow() + " " + each.asked()).toList());
		DataFlow without = flow("device x : headingGate\n" + network("bus", "x.bus\n p : pilot"));
		assertEquals(Verdict.NO_SOURCE, want(without, "p").verdict());
		assertEquals(List.of(), without.missingMaps());
	}

	@Test
	void anObsoleteMessageIsToldApartFromNone() {
		WantedData want = want(flow(network("bus", "old : oldThermometer\n d : seaDial")), "d");
		assertEquals(Verdict.ONLY_OBSOLETE, want.verdict());
		assertEquals(List.of("Skerry.bus.old 130310"), want.elsewhere().stream().map(each -> each.device() + " " + each.use()).toList());
		assertEquals(Verdict.MET, want(flow(network("bus", "old : oldThermometer\n new : thermometer\n d : seaDial")), "d").verdict());
		assertEquals(Verdict.NO_SOURCE, want(flow(network("bus", "d : seaDial")), "d").verdict());
	}

	@Test
	void whatOnlyTheTextOfALineHasAGatewayTellIsAMapThatItLacks() {
		String line = "device x : gate\n device dial : oldDial\n serial line at 4800 baud { from x.out; to dial.lower; carries %s }\n"
				+ network("bus", "s : sounder\n x.bus");
		DataFlow flow = flow(line.formatted("DPT every 2 s; carries MWV every 1 s"));
		assertEquals(List.of("MWV"), flow.missingMaps().stream().map(each -> each.asked().toString()).toList());
		assertEquals(Optional.empty(), flow.missingMaps().get(0).device());
		assertEquals(List.of(), flow(line.formatted("DPT every 2 s")).missingMaps());
	}
}
