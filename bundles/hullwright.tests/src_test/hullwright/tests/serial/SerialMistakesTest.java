/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import hullwright.analysis.serial.LineRate;
import hullwright.analysis.serial.SentenceLeftOut;
import hullwright.analysis.serial.SentenceOnLine;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialProblem;
import hullwright.analysis.serial.Waiting;
import hullwright.network.Boat;
import hullwright.network.DevicePortRef;
import hullwright.network.SerialLine;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Pgn;
import hullwright.network.data.Timing;
import hullwright.quantity.BitRate;

/**
 * Texts and catalogs that state what cannot be: told, never computed with.
 */
class SerialMistakesTest {

	@ParameterizedTest
	@ValueSource(doubles = { 0, -1, Double.NaN, Double.POSITIVE_INFINITY, 1e-300 })
	void anIntervalThatCannotBeIsLeftOut(double seconds) {
		SerialLineFigures line = SerialText.carrying(4800, SerialText.regular("HDG", 25, seconds), SerialText.event("DSC", 56, seconds), SerialText.regular("DPT", 20, 1));
		assertEquals(List.of(SentenceLeftOut.Reason.INTERVAL_IMPOSSIBLE, SentenceLeftOut.Reason.INTERVAL_IMPOSSIBLE),
				line.load().leftOut().stream().map(SentenceLeftOut::reason).toList());
		assertTrue(line.load().leftOut().get(0).reason().isMistake());
		assertEquals(20 / 480.0, line.use().orElseThrow().withEvents().fraction(), 1e-12);
	}

	@Test
	void sentencesWithoutLengthOrTimingAreLeftOut() {
		SerialLineFigures line = SerialText.carrying(4800, SerialText.regular("CUR", 0, 1), SerialText.regular("CUR", 0, 1), SerialText.regular("BAD", -5, 1),
				SerialText.sentence("HTC", 60, Timing.UNSTATED));
		assertEquals(List.of(SentenceLeftOut.Reason.LENGTH_UNSTATED, SentenceLeftOut.Reason.LENGTH_IMPOSSIBLE, SentenceLeftOut.Reason.TIMING_UNSTATED),
				line.load().leftOut().stream().map(SentenceLeftOut::reason).toList());
		assertEquals(2, line.load().leftOut().get(0).count());
		Waiting.Bounded waiting = assertInstanceOf(Waiting.Bounded.class, line.waiting());
		assertEquals(0, waiting.backlog());
		assertEquals(0, waiting.longest().seconds());
		assertEquals(0, waiting.run().orElseThrow().seconds());
	}

	private static SerialLineFigures at(double bitsPerSecond) {
		Boat boat = SerialText.boat("log : line out : talker, 4800 baud; sends VDM on event, at least 1 s apart by out\ndial : line in1 : listener, buffers 1 s",
				"serial first { from log.out; to dial.in1 }");
		SerialLine line = boat.serialLines().get(0);
		SerialLine wrong = new SerialLine(line.name(), line.title(), Optional.of(new BitRate(bitsPerSecond)), line.from(), line.to(), line.carries(), line.length(),
				line.cable(), line.earthsShield(), line.origin());
		return SerialLineFigures.of(wrong, boat, List.of(SerialText.regular("DPT", 20, 1)));
	}

	@ParameterizedTest
	@ValueSource(doubles = { 0, -4800, Double.NaN, Double.POSITIVE_INFINITY, 1e-300 })
	void aRateThatCannotBeIsTold(double bitsPerSecond) {
		SerialLineFigures line = at(bitsPerSecond);
		assertEquals(List.of(new SerialProblem.RateImpossible(new BitRate(bitsPerSecond))), line.problems());
		assertEquals(new LineRate(Optional.empty(), LineRate.Basis.UNKNOWN), line.rate());
		assertEquals(Optional.empty(), line.use());
		assertEquals(new Waiting.Unbounded(Waiting.Reason.RATE_UNKNOWN), line.waiting());
		assertEquals(20, line.load().regular().perSecond());
	}

	@Test
	void fiveHundredSentencesAreNoBound() {
		List<SentenceOnLine> many = new ArrayList<>();
		for (int i = 0; i < 500; i++) {
			many.add(SerialText.regular("S" + i, 82, 1));
		}
		SerialLineFigures line = SerialText.carrying(4800, many);
		assertEquals(500 * 82 / 480.0, line.use().orElseThrow().regular().fraction(), 1e-9);
		assertEquals(new Waiting.Unbounded(Waiting.Reason.OVERLOAD), line.waiting());
		assertInstanceOf(SerialProblem.NeverDrains.class, line.problems().get(0));
	}

	/** Just below what the line carries, every run goes on beyond what is followed, and the bound stands. */
	@Test
	void aLineThatIsAlmostFullHasABound() {
		List<SentenceOnLine> many = new ArrayList<>();
		for (int i = 0; i < 500; i++) {
			many.add(SerialText.regular("S" + i, 48, 50.001));
		}
		many.add(SerialText.regular("HDG", 1, 0.9));
		Waiting.Bounded waiting = assertInstanceOf(Waiting.Bounded.class, SerialText.carrying(4800, many.subList(0, 500)).waiting());
		assertEquals(500 * 48, waiting.backlog());
		assertEquals(Optional.empty(), waiting.run());
		assertEquals(new Waiting.Unbounded(Waiting.Reason.OVERLOAD), SerialText.carrying(4800, many).waiting());
	}

	@Test
	void anEndThatIsNoSerialPort() {
		Boat boat = SerialText.boat("log : line out : talker, 4800 baud; sends DPT by out", "serial first { from log.out }");
		SerialLine line = boat.serialLines().get(0);
		DevicePortRef none = new DevicePortRef("Skerry.ghost", "in1");
		SerialLineFigures ghost = SerialLineFigures.of(new SerialLine(line.name(), "", line.rate(), line.from(), List.of(none), List.of(), Optional.empty(),
				Optional.empty(), false, line.origin()), boat, List.of());
		assertEquals(List.of(new SerialProblem.NoSerialPort(none)), ghost.problems());
	}

	@Test
	void aPgnIsNoSentence() {
		Boat boat = SerialText.boat("log : line out : talker; sends 128267", "");
		Pgn pgn = (Pgn) boat.devices().get(0).sends().get(0).use().message();
		assertThrows(IllegalArgumentException.class, () -> new SentenceOnLine("Skerry.log", new MessageUse(pgn, Optional.empty()), Timing.UNSTATED));
	}
}
