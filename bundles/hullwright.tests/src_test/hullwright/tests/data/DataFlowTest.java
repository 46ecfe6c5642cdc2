/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.data;

import static hullwright.tests.data.BusText.network;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.data.DataFlow;
import hullwright.analysis.data.DataInstances;
import hullwright.analysis.data.DataPath;
import hullwright.analysis.data.DataProblem;
import hullwright.analysis.data.DoubledData;
import hullwright.analysis.data.ReceivedData;
import hullwright.analysis.data.SeveralSources;
import hullwright.analysis.data.ShownData;
import hullwright.analysis.data.ToldMessage;
import hullwright.analysis.data.WantedData;
import hullwright.analysis.data.WantedData.Verdict;
import hullwright.analysis.serial.SentenceOnLine;
import hullwright.network.Boat;
import hullwright.testkit.BoatText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The ways of data on small boats, against what a practitioner would say.
 */
class DataFlowTest {

	private static final String KIT = """
			import "standard:messages"
			catalog Kit "Invented" {
			""" + BusText.HARDWARE + """
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
			  device steering { port bus : f male; wants 127250 as magnetic or 127250 as true at least every 100 ms }
			  device nakedDial { port bus : f male; wants 129025 or 129029 at least every 1 s; shows 128267 }
			  device panel { port bus : f male; sends 127502 on event, instance settable; sends 126984 on event }
			  device loads { port bus : f male; wants 127502; sends 127501 on event, instance settable }
			  device alarmed { port bus : f male; sends 126983 every 1 s }
			  device zero { port bus : f male; sends 128267 every 0 s }
			  device oldCompass { line out : talker, differential, 4800 baud; sends HDG every 100 ms by out; sends HDM every 1 s by out }
			  device headingGate { port bus : f male; line lower : listener, isolated, 4800 baud; turns HDG to 127250 as magnetic by lower }
			  device maker { port bus : f male; turns 127250 as magnetic and 127258 to 127250 as true }
			  device compass { port bus : f male; sends 127250 as magnetic every 100 ms; sends 127258 every 1 s }
			  device trueDial { port bus : f male; wants 127250 as true at least every 2 s }
			  device mirror { port bus : f male; turns 128267 to 128267 }
			}
			""";

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

	/** On its network a device sees the address of the gateway, so that is what an installer sets it to, or what stands behind it. */
	@Test
	void aDeviceMayBeSetToListenToAGatewayOrToWhatStandsBehindIt() {
		for (String from : List.of("g", "Skerry.old")) {
			DataFlow flow = flow("device old : oldCompass\n" + network("bus", "g : headingGate\n p : steering { takes 127250 as magnetic from "
					+ from.replace("Skerry.", "") + " }") + "serial heading at 4800 baud { from old.out; to bus.g.lower }");
			assertEquals(Verdict.MET, want(flow, "p").verdict(), from);
			assertEquals(List.of(), flow.problems(), from);
			assertEquals(ReceivedData.Choice.SET, want(flow, "p").received().get(0).choice());
		}
	}

	/** What a line is said to carry without saying how often comes as often as its talker tells it, not as is usual. */
	@Test
	void aLineThatNamesASentenceOnlyKeepsItsTalkersInterval() {
		String boat = "device old : oldCompass\n" + network("bus", "g : headingGate\n p : steering")
				+ "serial heading at 4800 baud { from old.out; to bus.g.lower; carries %s }";
		assertEquals(Verdict.MET, want(flow(boat.formatted("HDG")), "p").verdict());
		assertEquals(Verdict.TOO_SLOW, want(flow(boat.formatted("HDG every 200 ms")), "p").verdict());
		assertEquals(List.of("HDG"), flow(boat.formatted("HDG")).on("Skerry.heading").stream().map(each -> each.use().toString()).toList());
	}

	/** HDG has 25 characters, HDM 21: at 480 a second the last of both is out after 46 / 480 s. */
	@Test
	void whatWaitsBehindOtherSentencesArrivesLater() {
		DataFlow flow = flow("device old : oldCompass\n" + network("bus", "g : headingGate\n p : steering") + "serial heading { from old.out; to bus.g.lower }");
		DataPath path = want(flow, "p").paths().get(0);
		assertEquals(46 / 480.0, path.delay().seconds(), 1e-6, "4800 baud is the only rate that both ends have");
		assertEquals(List.of(), path.unstated());
	}

	@Test
	void aGatewayThatNeedsMoreWaitsForTheSlowest() {
		DataFlow flow = flow(network("bus", "c : compass\n m : maker\n d : trueDial"));
		WantedData heading = want(flow, "d");
		assertEquals(Verdict.MET, heading.verdict());
		assertTrue(heading.paths().stream().allMatch(each -> each.timing().every().orElseThrow().seconds() == 1), "as often as the variation comes");
		DataPath ofHeading = heading.paths().stream().filter(each -> each.source().use().message().name().equals("127250")).findFirst().orElseThrow();
		assertEquals(1, ofHeading.delay().seconds(), "a heading may wait for the next variation");
	}

	@Test
	void theSlowerRadioCountsWhereTheHopIsSilent() {
		DataFlow flow = flow("device ipad : tablet\n" + network("bus", "s : sounder\n r : radio") + "wireless deck { from bus.r.air; to ipad.air }");
		assertEquals(0.2, want(flow, "ipad").paths().get(0).delay().seconds(), 1e-9);
		assertEquals(List.of(), want(flow, "ipad").paths().get(0).unstated());
	}

	/** Two helms command one switch bank, and every panel may answer an alert. */
	@Test
	void commandsAndAnswersFromSeveralDevicesAreNoConflict() {
		DataFlow flow = flow(network("bus", "lower : panel\n fly : panel\n l : loads\n r : alarmed\n s : alarmed\n h : head"));
		assertEquals(List.of(), flow.shared());
		assertEquals(List.of("126984", "126984", "127501", "126983", "126983"), flow.unused().stream().map(each -> each.use().toString()).toList(),
				"a command that is addressed to one device is not lost on the others");
		List<SeveralSources> banks = flow(network("bus", "l : loads\n k : loads")).shared();
		assertEquals(List.of(true), banks.stream().map(SeveralSources::sameKey).toList(), "two banks of one number are");
	}

	@Test
	void whoseDataIsTakenIsToldWhereItIsKnown() {
		DataFlow flow = flow(network("bus", "s : sounder\n f : fastSounder\n d : display\n n : nakedDial\n p : position\n q : pilot { takes 128267 from f }"));
		ShownData naked = flow.shows().stream().filter(each -> each.device().endsWith(".n")).findFirst().orElseThrow();
		assertEquals(ReceivedData.Choice.NOT_TOLD, naked.received().get(0).choice());
		assertEquals(List.of("Skerry.bus.s", "Skerry.bus.f"), naked.received().get(0).tellers());
		assertEquals(Optional.of("Skerry.bus.f"), want(flow, "q").received().get(0).taken());
		assertEquals(ReceivedData.Choice.NO_OTHER, want(flow, "n").received().get(0).choice());
		ShownData display = flow.shows().stream().filter(each -> each.device().endsWith(".d")).findFirst().orElseThrow();
		assertEquals(List.of("127505"), display.missing().stream().map(Object::toString).toList());
	}

	@Test
	void instancesAreListedByMessage() {
		List<DataInstances> instances = flow(network("bus", "k : tank { instance 3 }\n l : tank\n m : tank { instance 3 }")).instances();
		assertEquals(1, instances.size());
		assertEquals(127505, instances.get(0).pgn().number());
		assertEquals(List.of(new DataInstances.OfInstance(0, List.of("Skerry.bus.l")), new DataInstances.OfInstance(3, List.of("Skerry.bus.k", "Skerry.bus.m"))),
				instances.get(0).instances());
	}

	@Test
	void whatIsToldOnEventsOnlyIsNotCalledOftenEnough() {
		assertEquals(Verdict.UNTIMED, want(flow(network("bus", "s : zero\n p : pilot")), "p").verdict());
	}

	@Test
	void anIntervalOfNothingIsAProblem() {
		assertTrue(flow(network("bus", "s : zero\n p : pilot")).problems().get(0) instanceof DataProblem.IntervalImpossible);
	}

	@Test
	void aBridgeWithBothSidesOnOneNetworkIsAProblem() {
		DataFlow flow = flow("device link : bridge { passes all }\n" + network("bus", "s : sounder\n d : display\n link.a\n link.b"));
		assertTrue(flow.problems().get(0) instanceof DataProblem.PassesBack, flow.problems() + "");
		assertEquals(1, flow.problems().size());
	}

	/** A third network behind two that go round gets everything as an echo; the loop is the one cause. */
	@Test
	void whatComesOutOfALoopIsNotToldAgain() {
		DataFlow flow = flow("device east : bridge { passes all }\n device west : bridge { passes all }\n device door : bridge { passes all }\n"
				+ network("home", "s : sounder\n door.a") + network("first", "door.b\n east.a\n west.a") + network("second", "d : display\n east.b\n west.b"));
		assertEquals(1, flow.loops().size());
		assertEquals(List.of("Skerry.east", "Skerry.west"), flow.loops().get(0).devices(), "the door is not part of it");
		assertEquals(List.of(), flow.doubled());
	}

	/** Nine networks, each bridged to each: there are hundred thousands of ways, and nobody wants to wait for them. */
	@Test
	void networksThatAreAllBridgedToEachOtherComeToAnEnd() {
		StringBuilder series = new StringBuilder();
		List<List<String>> drops = new ArrayList<>();
		for (int i = 0; i < 9; i++) {
			drops.add(new ArrayList<>(List.of("d" + i + " : display")));
			for (int j = 0; j < i; j++) {
				series.append("device b").append(j).append("to").append(i).append(" : bridge { passes all }\n");
				drops.get(j).add("b" + j + "to" + i + ".a");
				drops.get(i).add("b" + j + "to" + i + ".b");
			}
		}
		drops.get(8).remove(0);
		drops.get(8).add("s : sounder");
		for (int i = 0; i < 9; i++) {
			series.append(network("net" + i, String.join("\n", drops.get(i))));
		}
		DataFlow flow = flow(series.toString());
		assertTrue(flow.wants().stream().allMatch(WantedData::isMet));
		assertTrue(flow.problems().stream().anyMatch(DataProblem.TooManyWays.class::isInstance));
		assertEquals(1, flow.loops().size());
	}
}
