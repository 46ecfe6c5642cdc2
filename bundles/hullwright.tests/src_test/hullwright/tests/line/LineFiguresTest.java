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

import org.junit.jupiter.api.Test;

import hullwright.analysis.line.LineAssumption;
import hullwright.analysis.line.LineFigures;
import hullwright.analysis.line.LineProblem;
import hullwright.analysis.line.MeterReading;
import hullwright.analysis.line.SignalLevel;
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
			}
			""";

	private static LineFigures line(String backbone, String drops) {
		Boat boat = BoatText.boat(KIT + """
				series Skerry "Invented" {
				  network bus {
				    backbone of wire {
				%s
				    }
				%s
				  }
				}
				""".formatted(backbone, drops));
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
		SignalLevel level = line.level().orElseThrow();
		double end = parallel(120, 30_000);
		double cable = 2 * 0.092 * 100;
		assertEquals(1.5 * end / (end + cable), level.heard().volts(), 1e-9);
		assertEquals(parallel(end, end + cable), level.load().ohms(), 1e-9);
		assertTrue(level.isGuaranteed());
		assertEquals(level.heard().volts() - 0.9, level.margin().volts(), 1e-12);
	}

	@Test
	void aThirdTerminatorLoadsASenderBeyondWhatItGuarantees() {
		LineFigures line = line(SHORT, "drop here.1 to third : built\n drop here.2 to n : node");
		assertFalse(line.level().orElseThrow().isGuaranteed());
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
	void aLineInPartsIsTold() {
		LineFigures line = line("terminator a : end\n tee here : t\n terminator b : end", "drop here.1 to n : node\n drop here.2 to m : node");
		assertEquals(List.of(), line.problems());
		Boat boat = BoatText.boat(KIT + """
				series Skerry "Invented" {
				  network bus {
				    backbone left of wire { terminator a : end
				      tee here : t
				    }
				    backbone right of wire { tee there : t
				      terminator b : end
				    }
				    drop here.1 to n : node
				    drop there.1 to m : node
				    drop there.2 to o : node
				  }
				}
				""");
		LineFigures parted = LineFigures.of(boat, Wiring.of(boat)).get(0);
		LineProblem.Parted problem = assertInstanceOf(LineProblem.Parted.class, parted.problems().get(0));
		assertEquals(List.of(List.of("Skerry.bus.m", "Skerry.bus.o"), List.of("Skerry.bus.n")), problem.parts());
	}
}
