/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

import hullwright.analysis.line.LineAssumption;
import hullwright.analysis.line.LineFigures;
import hullwright.analysis.line.LineProblem;
import hullwright.analysis.line.MeterReading;
import hullwright.analysis.line.SignalLevel;
import hullwright.analysis.line.SignalLevels;
import hullwright.analysis.wiring.Wiring;
import hullwright.network.Boat;
import hullwright.quantity.Resistance;
import hullwright.testkit.BoatText;

/**
 * What a meter shows and how far a level carries, against hand calculation. The readings of trade-known cases are those of public
 * installation guides: 60 ohm with two terminators, 120 with one, 40 with three, open with none.
 */
class LineFiguresTest {

	/** Contacts without resistance, a cable whose signal conductor is the published 92 mohm/m of light cable. */
	private static final String KIT = """
			catalog Kit "Invented" {
			  family f "Invented" { vendor; contact 0 ohm }
			  cable wire { power 22 AWG; signal 24 AWG, 92 mohm/m each way; delay 4.46 ns/m }
			  terminator end { end f male; 120 ohm }
			  tee t { backbone f male, f female; ports 1..50 : f female }
			  isolator gap { backbone f male, f female; breaks supply }
			  device node { port bus : f male; signal input resistance 30 kohm; supply 9 V .. 16 V; load 1 LEN }
			  device built { port bus : f male; signal input resistance 30 kohm; terminates 120 ohm }
			  device unknown { port bus : f male }
			  device leaded { lead 0.5 m of wire, f male; signal input resistance 30 kohm }
			  adapter longer { f male to f female; length 0.3 m }
			  family plainFamily "Invented" { vendor }
			  cable plain { ends plainFamily male, plainFamily female }
			  terminator plainEnd { end plainFamily male; 120 ohm }
			  device shorting { port bus : f male; signal input resistance 0 ohm }
			  terminator short { end f male; 0 ohm }
			}
			""";

	private static LineFigures line(String backbone, String drops) {
		return network("backbone of wire {\n" + backbone + "\n}\n" + drops);
	}

	private static LineFigures network(String items) {
		Boat boat = BoatText.boat(KIT + "series Skerry \"Invented\" { network bus {\n" + items + "\n} }\n");
		return LineFigures.of(boat, Wiring.of(boat)).get(0);
	}

	private static double reading(LineFigures line, int end) {
		return line.meter().get(end).reading().map(Resistance::ohms).orElse(Double.NaN);
	}

	private static double parallel(double... ohms) {
		double siemens = 0;
		for (double each : ohms) {
			siemens += 1 / each;
		}
		return 1 / siemens;
	}

	private static final String SHORT = "terminator a : end\n tee here : t\n terminator b : end";

	@Test
	void twoTerminatorsShowSixtyOhm() {
		assertEquals(60, reading(line(SHORT, ""), 0), 1e-9);
	}

	@Test
	void oneTerminatorShowsAHundredAndTwentyAndThreeShowForty() {
		assertEquals(120, reading(line("terminator a : end\n tee here : t", ""), 0), 1e-9);
		double nodesAndThree = parallel(40, 30_000);
		assertEquals(nodesAndThree, reading(line(SHORT, "drop here.1 to third : built"), 0), 1e-9);
	}

	/** 120 in parallel with 120 + 2 * 0.092 ohm/m * 100 m: 64.3 ohm. */
	@Test
	void ahundredMetresOfLightCableShowMoreThanSixty() {
		LineFigures line = line("terminator a : end\n cable 100 m\n terminator b : end", "");
		assertEquals(64.3, reading(line, 0), 0.05);
		assertEquals(parallel(120, 120 + 2 * 0.092 * 100), reading(line, 0), 1e-9);
		assertEquals(reading(line, 0), reading(line, 1), 1e-9);
	}

	/** Fifty nodes of 30 kohm are 600 ohm in parallel: 54.5 ohm. */
	@Test
	void fiftyNodesLowerTheReading() {
		StringBuilder drops = new StringBuilder();
		for (int i = 1; i <= 50; i++) {
			drops.append("drop here.").append(i).append(" to n").append(i).append(" : node\n");
		}
		LineFigures line = line(SHORT, drops.toString());
		assertEquals(54.5, reading(line, 0), 0.05);
		assertEquals(parallel(60, 600), reading(line, 0), 1e-9);
		assertEquals(List.of(), line.problems());
	}

	@Test
	void nodesOfUnknownInputAreAssumedWithinWhatTheStandardAllows() {
		LineFigures line = line(SHORT, "drop here.1 to n : unknown");
		MeterReading meter = line.meter().get(0);
		assertEquals(parallel(60, 30_000), meter.reading().orElseThrow().ohms(), 1e-9);
		assertEquals(parallel(60, 20_000), meter.lowest().orElseThrow().ohms(), 1e-9);
		assertEquals(parallel(60, 100_000), meter.highest().orElseThrow().ohms(), 1e-9);
		assertTrue(line.assumptions().contains(new LineAssumption(LineAssumption.Kind.INPUT_RESISTANCE, List.of("Skerry.bus.n"))));
	}

	@Test
	void aPairWithoutTerminatorIsOpenForTheMeter() {
		LineFigures line = line("tee here : t\n cable 2 m\n tee there : t", "");
		assertEquals(Optional.empty(), line.meter().get(0).reading());
		assertEquals(List.of(new LineProblem.NoTerminator()), line.problems());
	}

	/** Turned round, the readings change ends. */
	@Test
	void aBackboneToldTheOtherWayRoundReadsTheSameFromItsEnds() {
		String drop = "drop here.1 via 3 m of wire to n : node";
		LineFigures oneWay = line("terminator a : end\n cable 5 m\n tee here : t\n cable 40 m\n terminator b : end", drop);
		LineFigures otherWay = line("terminator b : end\n cable 40 m\n tee here : t\n cable 5 m\n terminator a : end", drop);
		assertEquals(reading(oneWay, 0), reading(otherWay, 1), 1e-12);
		assertEquals(reading(oneWay, 1), reading(otherWay, 0), 1e-12);
	}

	@Test
	void aCutCableAndOneOfNoLengthChangeNothing() {
		LineFigures whole = line("terminator a : end\n cable 40 m\n terminator b : end", "");
		LineFigures cut = line("terminator a : end\n cable 15 m\n tee x : t\n cable 0 m\n tee y : t\n cable 25 m\n terminator b : end", "");
		assertEquals(reading(whole, 0), reading(cut, 0), 1e-12);
	}

	/**
	 * Sender at one end, receiver at the other, 100 m of 92 mohm/m between them and a terminator at each: by hand the receiver
	 * gets its terminator's (and its own) share of what the sender gives.
	 */
	@Test
	void theLevelAtTheFarNodeIsADividersShare() {
		LineFigures line = line("terminator a : end\n tee here : t\n cable 100 m\n tee there : t\n terminator b : end",
				"drop here.1 to here1 : node\n drop there.1 to there1 : node");
		SignalLevels levels = line.levels().orElseThrow();
		SignalLevel level = levels.worst();
		double end = parallel(120, 30_000);
		double cable = 2 * 0.092 * 100;
		assertEquals(1.5 * end / (end + cable), level.heard().volts(), 1e-9);
		assertEquals(parallel(end, end + cable), levels.leastLoad().load().ohms(), 1e-9);
		assertEquals(parallel(end, end + cable), levels.mostLoad().load().ohms(), 1e-9);
		assertTrue(levels.areGuaranteed());
		assertEquals(level.heard().volts() - 0.9, level.margin().volts(), 1e-12);
	}

	@Test
	void aThirdTerminatorLoadsASenderBeyondWhatItGuarantees() {
		LineFigures line = line(SHORT, "drop here.1 to third : built\n drop here.2 to n : node");
		assertFalse(line.levels().orElseThrow().areGuaranteed());
	}

	/**
	 * The one that is heard worst need not be the one that is loaded worst: over 200 m the sender in the middle of the line sees
	 * its two halves in parallel, those at the ends a terminator each.
	 */
	@Test
	void everySendersLoadIsLookedAt() {
		LineFigures line = line(
				"terminator a : end\n tee here : t\n cable 100 m\n tee middle : t\n cable 100 m\n tee there : t\n terminator b : end",
				"drop here.1 to first : node\n drop middle.1 to second : node\n drop there.1 to third : node");
		SignalLevels levels = line.levels().orElseThrow();
		double half = 2 * 0.092 * 100;
		double end = parallel(120, 30_000);
		double fromMiddle = parallel(30_000, end + half, end + half);
		double fromEnd = parallel(end, half + parallel(30_000, half + end));
		assertEquals(fromEnd, levels.leastLoad().load().ohms(), 1e-9);
		assertEquals("Skerry.bus.second", levels.mostLoad().sender());
		assertEquals(fromMiddle, levels.mostLoad().load().ohms(), 1e-9);
		assertFalse(levels.areGuaranteed());
	}

	/** 0.5 m of lead and 0.3 m of adapter carry the signal too, at the 5 ns/m that holds for cables of which nothing is said. */
	@Test
	void leadsAndAdaptersTakeTimeToo() {
		LineFigures line = line("terminator a : end\n tee here : t\n cable 30 m\n tee there : t\n terminator b : end",
				"drop here.1 to first : leaded\n drop there.1 via longer to second : node");
		var propagation = line.propagation().orElseThrow();
		assertEquals(30.8, propagation.distance().metres(), 1e-9);
		assertEquals(30.5 * 4.46e-9 + 0.3 * 5e-9, propagation.delay().seconds(), 1e-15);
		assertTrue(line.assumptions().stream().anyMatch(each -> each.kind() == LineAssumption.Kind.DELAY), () -> line.assumptions().toString());
	}

	/**
	 * Where no catalog says: signal conductors of 24 AWG, 84.2 mohm/m (ASTM B258 and IEC 60028 in the wire tables: 0.0842 ohm/m at
	 * 20 °C), and contacts of 5 mohm.
	 */
	@Test
	void unstatedCopperAndContactsAreAssumedAndTold() {
		LineFigures line = line("terminator a : plainEnd\n cable 100 m of plain\n terminator b : plainEnd", "");
		double contact = 2 * 0.005;
		assertEquals(parallel(120, 120 + 2 * 0.0842 * 100 + 2 * contact), reading(line, 0), 0.01);
		assertTrue(line.assumptions().contains(new LineAssumption(LineAssumption.Kind.CONTACT_RESISTANCE, List.of("plainFamily"))),
				() -> line.assumptions().toString());
		assertTrue(line.assumptions().stream().anyMatch(each -> each.kind() == LineAssumption.Kind.SIGNAL_CONDUCTOR));
	}

	/** 5 m + 30 m + 2 m at 4.46 ns/m; the bit allows 1750 ns - 300 ns one way. */
	@Test
	void theDelayBetweenTheNodesThatAreFarthestApart() {
		LineFigures line = line("terminator a : end\n tee here : t\n cable 30 m\n tee there : t\n terminator b : end",
				"drop here.1 via 5 m of wire to first : node\n drop there.1 via 2 m of wire to second : node\n drop there.2 to third : node");
		var propagation = line.propagation().orElseThrow();
		assertEquals(37, propagation.distance().metres(), 1e-9);
		assertEquals(37 * 4.46e-9, propagation.delay().seconds(), 1e-15);
		assertEquals(1450e-9, propagation.allowed().seconds(), 1e-15);
	}

	/** A block on a drop: its branches belong to the stub, each cable counted once. */
	@Test
	void aBranchingDropIsMeasuredToItsFarthestDevice() {
		LineFigures line = line("terminator a : end\n tee here : t\n terminator b : end",
				"drop here.1 via 2 m of wire, block : t to first : node\n drop block.1 via 3 m of wire to second : node\n"
						+ " drop here.2 via 1 m of wire to third : node");
		assertEquals(2, line.stubs().size());
		assertEquals(5, line.stubs().get(0).length().metres(), 1e-9);
		assertEquals("Skerry.bus.second", line.stubs().get(0).farthest());
		assertEquals(5, line.stubs().get(0).total().metres(), 1e-9);
		assertEquals(6, line.stubsTogether().metres(), 1e-9);
	}

	@Test
	void aLineInPartsIsToldAndTellsNoLevelAcrossTheGap() {
		LineFigures parted = network("""
				backbone left of wire { terminator a : end
				  tee here : t
				}
				backbone right of wire { tee there : t
				  terminator b : end
				}
				drop here.1 to n : node
				drop there.1 to m : node
				drop there.2 to o : node
				""");
		LineProblem.Parted problem = assertInstanceOf(LineProblem.Parted.class, parted.problems().get(0));
		assertEquals(List.of(List.of("Skerry.bus.m", "Skerry.bus.o"), List.of("Skerry.bus.n")), problem.parts());
		SignalLevel level = parted.levels().orElseThrow().worst();
		assertEquals(Set.of("Skerry.bus.m", "Skerry.bus.o"), Set.of(level.sender(), level.receiver()));
		assertEquals(1.5, level.heard().volts(), 1e-9);
	}

	/** Nothing can be heard over a short circuit, and no level is told. */
	@Test
	void aShortedPairIsToldWhateverShortsIt() {
		LineFigures terminator = line("terminator a : short\n tee here : t\n terminator b : end", "drop here.1 to n : node\n drop here.2 to m : node");
		assertEquals(List.of(new LineProblem.Shorted(List.of("Skerry.bus.a"))), terminator.problems());
		assertEquals(Optional.empty(), terminator.levels());
		assertEquals(0, reading(terminator, 0));
		LineFigures device = line(SHORT, "drop here.1 to n : node\n drop here.2 to s : shorting");
		assertEquals(List.of(new LineProblem.Shorted(List.of("Skerry.bus.s"))), device.problems());
		assertEquals(Optional.empty(), device.levels());
	}

	/**
	 * A ring of 24 m with nodes at 0, 6, 10 and 18 m. The node farthest from the first is the third, and the first is farthest from
	 * that one (10 m), but the second and the fourth are 12 m apart both ways round.
	 */
	private static final String RING = """
			backbone left of wire {
			  tee first : t
			  cable 6 m
			  tee second : t
			  cable 4 m
			  tee third : t
			  cable 8 m
			  tee fourth : t
			}
			join fourth.5 via 6 m of wire to first.5
			drop first.1 to n : node
			drop second.1 to m : node
			drop third.1 to o : node
			drop fourth.1 to p : node
			""";

	@Test
	void aPieceWithoutDevicesHidesNoLoop() {
		String apart = "backbone right of wire { terminator c : end\n tee spare : t\n cable 5 m\n tee other : t\n}\n";
		assertEquals(12, network(RING).propagation().orElseThrow().distance().metres(), 1e-9);
		assertEquals(12, network(RING + apart).propagation().orElseThrow().distance().metres(), 1e-9);
	}

	@Test
	void twoNodesAtOneBlockAreNothingApart() {
		LineFigures line = line(SHORT, "drop here.1 to n : node\n drop here.2 to m : node");
		assertEquals(0, line.propagation().orElseThrow().distance().metres());
		assertEquals(0, line.propagation().orElseThrow().delay().seconds());
	}

	@Test
	void oneNodeHasNobodyToHearIt() {
		LineFigures line = line(SHORT, "drop here.1 to n : node");
		assertEquals(Optional.empty(), line.propagation());
		assertEquals(Optional.empty(), line.levels());
	}

	@Test
	void everyNodeMoreLowersWhatAMeterShows() {
		double before = reading(line(SHORT, ""), 0);
		String drops = "";
		for (int i = 1; i <= 5; i++) {
			drops += "drop here." + i + " to n" + i + " : node\n";
			double now = reading(line(SHORT, drops), 0);
			assertTrue(now < before, i + " nodes show " + now + ", one less " + before);
			before = now;
		}
	}
}
