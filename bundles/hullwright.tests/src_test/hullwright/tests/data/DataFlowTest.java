/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.data.DataFlow;
import hullwright.analysis.data.DataPath;
import hullwright.analysis.data.DataProblem;
import hullwright.analysis.data.DoubledData;
import hullwright.analysis.data.SeveralSources;
import hullwright.analysis.data.ToldMessage;
import hullwright.analysis.data.WantedData;
import hullwright.analysis.data.WantedData.Verdict;
import hullwright.analysis.serial.SentenceOnLine;
import hullwright.network.Boat;
import hullwright.testkit.BoatText;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The ways of data on small boats, against what a practitioner would say.
 */
class DataFlowTest {

	private static final String KIT = """
			import "standard:messages"
			catalog Kit "Invented" {
			  family f "Invented" { vendor }
			  terminator end { end f male; 120 ohm }
			  tee block { backbone f male, f female; ports 1..9 : f female }
			  cable wire { ends f male, f female }
			  device sounder { port bus : f male; sends 128267 every 1 s }
			  device fastSounder { port bus : f male; sends 128267 every 100 ms }
			  device position { port bus : f male; sends 129025 every 100 ms; sends 129026 every 250 ms }
			  device tank { port bus : f male; sends 127505 every 2500 ms, instance settable }
			  device display { port bus : f male; wants 128267; shows 129025 and 129026 and 127505, source selectable }
			  device pilot { port bus : f male; wants 128267 at least every 500 ms }
			  device head { port bus : f male; sends 126208 on event; wants 126208 }
			  device bridge { port a : f male; port b : f male; isolated a from b; passes settable }
			  device gate { port bus : f male
			    line lower : listener, isolated, 4800 baud
			    line out : talker, differential, 4800 baud
			    turns DPT to 128267 by lower
			    turns 128267 to DPT at most every 2 s by out
			    turns 129025 and 129026 to RMC at most every 1 s by out
			  }
			  device oldSounder { line out : talker, differential, 4800 baud; sends DPT every 1 s by out }
			  device oldDial { line lower : listener, isolated, 4800 baud; wants DPT at least every 2 s by lower }
			  device oldPlotter { line lower : listener, isolated, 4800 baud; wants RMC by lower }
			  device radio { port bus : f male; wireless air; passes 128267 from bus to air }
			  device tablet { wireless air : delay 200 ms; wants 128267 by air }
			  device mirror { port bus : f male; turns 128267 to 128267 }
			}
			""";

	private static String network(String name, String drops) {
		StringBuilder text = new StringBuilder("network " + name + " { backbone of wire { terminator a : end\n tee t : block\n terminator z : end }\n");
		int port = 1;
		for (String drop : drops.strip().split("\n")) {
			if (!drop.isBlank()) {
				text.append("drop t.").append(port++).append(" to ").append(drop.strip()).append("\n");
			}
		}
		return text.append("}\n").toString();
	}

	private static DataFlow flow(String series, String... options) {
		return DataFlow.of(boat(series, options));
	}

	private static Boat boat(String series, String... options) {
		return BoatText.boat(KIT + "series Skerry \"Invented\" {\n" + series + "\n}", options);
	}

	private static WantedData want(DataFlow flow, String device) {
		return flow.wants().stream().filter(each -> each.device().endsWith("." + device)).findFirst().orElseThrow();
	}

	private static List<String> legs(DataPath path) {
		return path.legs().stream().map(leg -> leg.how() + " " + leg.use() + " on " + leg.carrier().name()).toList();
	}

	@Test
	void onOneNetworkEveryDeviceHearsEveryOther() {
		DataFlow flow = flow(network("bus", "s : sounder\n d : display\n p : pilot"));
		assertEquals(Verdict.MET, want(flow, "d").verdict());
		assertEquals(List.of("SENT 128267 on Skerry.bus"), legs(want(flow, "d").paths().get(0)));
		assertEquals(Verdict.TOO_SLOW, want(flow, "p").verdict(), "once a second is not twice a second");
		assertEquals(Verdict.MET, want(flow(network("bus", "s : fastSounder\n p : pilot")), "p").verdict());
	}

	@Test
	void aGapSaysWhetherAnybodyTellsItAtAll() {
		assertEquals(Verdict.NO_SOURCE, want(flow(network("bus", "p : position\n d : display")), "d").verdict());
		WantedData other = want(flow(network("bus", "d : display") + network("second", "s : sounder")), "d");
		assertEquals(Verdict.NOT_REACHED, other.verdict());
		assertEquals("Skerry.second.s", other.elsewhere().get(0).device());
	}

	@Test
	void aBridgePassesWhatItIsSetToPassAndOnlyThat() {
		String joined = withBridge("128267 from a to b", "s : sounder", "d : display");
		DataFlow flow = flow(joined);
		assertEquals(Verdict.MET, want(flow, "d").verdict());
		assertEquals(List.of("SENT 128267 on Skerry.first", "PASSED 128267 on Skerry.second"), legs(want(flow, "d").paths().get(0)));
		assertEquals(Verdict.NOT_REACHED, want(flow(withBridge("129025 from a to b", "s : sounder", "d : display")), "d").verdict());
		assertEquals(Verdict.NOT_REACHED, want(flow(withBridge("128267 from b to a", "s : sounder", "d : display")), "d").verdict());
	}

	/** Two networks with a bridge between them, by its port a on the first and its port b on the second. */
	private static String withBridge(String passes, String first, String second) {
		return "device link : bridge { passes " + passes + " }\n" + network("first", first + "\n link.a") + network("second", second + "\n link.b");
	}

	@Test
	void whatABridgeBringsCountsOnTheOtherNetwork() {
		DataFlow flow = flow(withBridge("all", "s : sounder", "d : display\n p : position"));
		assertEquals(1, flow.on("Skerry.second").stream().filter(each -> each.how() == ToldMessage.How.PASSED).count());
		assertEquals(2, flow.on("Skerry.first").stream().filter(each -> each.how() == ToldMessage.How.PASSED).count());
		assertEquals(3, flow.passedOn().size());
		assertEquals(List.of(), flow.loops(), "one bridge makes no loop");
		assertEquals(List.of(), flow.shared());
	}

	/** Sounder of old: a sentence a second, 20 characters at 480 a second, becomes a PGN on the bus. */
	@Test
	void aGatewayTurnsASentenceIntoAMessageOfTheBus() {
		DataFlow flow = flow("device old : oldSounder\n" + network("bus", "g : gate\n d : display") + "serial depth at 4800 baud { from old.out; to bus.g.lower }");
		WantedData depth = want(flow, "d");
		assertEquals(Verdict.MET, depth.verdict());
		assertEquals(List.of("SENT DPT on Skerry.depth", "TURNED 128267 on Skerry.bus"), legs(depth.paths().get(0)));
		assertEquals("Skerry.old", depth.paths().get(0).source().device());
		assertEquals(1, depth.paths().get(0).timing().every().orElseThrow().seconds());
		assertEquals(20 / 480.0, depth.paths().get(0).delay().seconds(), 1e-3, "DPT has some 20 characters");
	}

	@Test
	void aGatewaySlowsDownWhatItTurnsAndNeedsAllOfIt() {
		String lines = "device dial : oldDial\n device plotter : oldPlotter\n";
		String serial = "serial out at 4800 baud { from bus.g.out; to dial.lower, plotter.lower }";
		DataFlow flow = flow(lines + network("bus", "g : gate\n s : fastSounder\n p : position") + serial);
		assertEquals(Verdict.MET, want(flow, "dial").verdict());
		assertEquals(2, want(flow, "dial").paths().get(0).timing().every().orElseThrow().seconds(), "not more often than the gateway turns it");
		assertEquals(2, want(flow, "plotter").paths().size(), "position and course stand behind it");
		List<SentenceOnLine> sentences = flow.sentencesOn(boat(lines + network("bus", "g : gate\n s : fastSounder\n p : position") + serial).serialLines().get(0));
		assertEquals(List.of("DPT", "RMC"), sentences.stream().map(each -> each.sentence().formatter()).sorted().toList());
		DataFlow without = flow(lines + network("bus", "g : gate\n s : fastSounder") + serial);
		assertEquals(Verdict.NO_SOURCE, want(without, "plotter").verdict());
	}

	@Test
	void aWirelessHopBringsItWithItsDelay() {
		DataFlow flow = flow("device ipad : tablet\n" + network("bus", "s : sounder\n r : radio") + "wireless deck { from bus.r.air; to ipad.air; delay 300 ms }");
		WantedData depth = want(flow, "ipad");
		assertEquals(Verdict.MET, depth.verdict());
		assertEquals(0.3, depth.paths().get(0).delay().seconds(), 1e-9);
		assertEquals(List.of(), depth.paths().get(0).unstated());
	}

	@Test
	void twoBridgesBetweenTheSameNetworksGoRound() {
		String two = "device east : bridge { passes all }\n device west : bridge { passes all }\n"
				+ network("first", "s : sounder\n east.a\n west.a") + network("second", "d : display\n east.b\n west.b");
		DataFlow flow = flow(two);
		assertEquals(1, flow.loops().size(), flow.loops() + "");
		assertEquals(List.of("Skerry.east", "Skerry.west"), flow.loops().get(0).devices());
		assertEquals(List.of("128267"), flow.loops().get(0).messages().stream().map(Object::toString).toList());
		assertEquals(List.of(), flow.doubled(), "the loop says it all");
		assertEquals(Verdict.MET, want(flow, "d").verdict());
	}

	@Test
	void threeBridgesInACircleGoRound() {
		String three = "device x : bridge { passes all }\n device y : bridge { passes all }\n device z : bridge { passes all }\n"
				+ network("first", "s : sounder\n x.a\n z.b") + network("second", "x.b\n y.a\n d : display") + network("third", "y.b\n z.a");
		DataFlow flow = flow(three);
		assertEquals(List.of(List.of("Skerry.x", "Skerry.y", "Skerry.z")), flow.loops().stream().map(each -> each.devices()).toList());
		assertEquals(Verdict.MET, want(flow, "d").verdict());
	}

	@Test
	void twoBridgesOneWayEachDoubleAndDoNotGoRound() {
		String two = "device east : bridge { passes all from a to b }\n device west : bridge { passes all from a to b }\n"
				+ network("first", "s : sounder\n east.a\n west.a") + network("second", "d : display\n east.b\n west.b");
		DataFlow flow = flow(two);
		assertEquals(List.of(), flow.loops());
		assertEquals(1, flow.doubled().size());
		DoubledData doubled = flow.doubled().get(0);
		assertEquals("Skerry.second", doubled.carrier().name());
		assertEquals(List.of("Skerry.east", "Skerry.west"), doubled.tellers());
	}

	@Test
	void twoTanksWithOneInstanceAreMistakenForEachOtherAndTwoPositionsAreNot() {
		List<SeveralSources> shared = flow(network("bus", "fuel : tank { instance 1 }\n water : tank { instance 1 }\n spare : tank { instance 2 }\n"
				+ "p : position\n q : position\n d : display")).shared();
		List<SeveralSources> same = shared.stream().filter(SeveralSources::sameKey).toList();
		assertEquals(1, same.size(), same + "");
		assertEquals(List.of("Skerry.bus.fuel", "Skerry.bus.water"), same.get(0).devices());
		assertEquals(List.of("129025", "129026"), shared.stream().filter(each -> !each.sameKey()).map(each -> each.use().toString()).sorted().toList());
	}

	/** Group functions come from every head and mean no datum. */
	@Test
	void groupFunctionsFromSeveralHeadsAreNoConflict() {
		DataFlow flow = flow(network("bus", "port1 : head\n port2 : head"));
		assertTrue(flow.shared().stream().noneMatch(SeveralSources::sameKey), flow.shared() + "");
		assertEquals(Verdict.MET, want(flow, "port1").verdict());
	}

	@Test
	void theSourceThatIsSetIsTheOneThatCounts() {
		String bus = "s : sounder\n f : fastSounder\n p : pilot { takes 128267 from %s }\n q : position";
		assertEquals(List.of("Skerry.bus.f"), want(flow(network("bus", bus.formatted("f"))), "p").sources().stream().map(each -> each.device()).toList());
		assertEquals(Verdict.TOO_SLOW, want(flow(network("bus", bus.formatted("s"))), "p").verdict());
		DataFlow silent = flow(network("bus", bus.formatted("q")));
		assertEquals(Verdict.TAKEN_SOURCE_SILENT, want(silent, "p").verdict());
		assertTrue(silent.problems().stream().anyMatch(DataProblem.TakesFromSilent.class::isInstance), silent.problems() + "");
	}

	@Test
	void whatNobodyHearsIsUnused() {
		DataFlow flow = flow(network("bus", "s : sounder\n p : position\n x : pilot"));
		assertEquals(List.of("129025", "129026"), flow.unused().stream().map(each -> each.use().toString()).toList());
	}

	@Test
	void aGatewayThatTurnsAMessageIntoItselfIsAProblemAndEnds() {
		DataFlow flow = flow(network("bus", "s : sounder\n m : mirror\n d : display"));
		assertEquals(1, flow.problems().size());
		assertEquals("Skerry.bus.m", flow.problems().get(0).subject());
		assertEquals(1, flow.on("Skerry.bus").size());
	}
}
