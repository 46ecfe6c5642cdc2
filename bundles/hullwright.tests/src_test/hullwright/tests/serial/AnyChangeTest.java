/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import hullwright.analysis.serial.CharacterRate;
import hullwright.analysis.serial.SentenceOnLine;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialLoad;
import hullwright.analysis.serial.Waiting;
import hullwright.quantity.BitRate;
import hullwright.quantity.Duration;

/**
 * What a change may do to the figures of a line, whatever the line: more sentences lower nothing, their order changes nothing, and
 * twice the rate halves what it should.
 */
class AnyChangeTest {

	private static final double ROUNDING = 1e-9;
	private static final BitRate SLOW = new BitRate(4800);
	private static final BitRate TWICE = new BitRate(9600);

	private static List<SentenceOnLine> random(Random random) {
		List<SentenceOnLine> sentences = new ArrayList<>();
		for (int i = random.nextInt(8); i >= 0; i--) {
			sentences.add(random(random, "S" + i));
		}
		return sentences;
	}

	/** One of five sentences has no length or no least interval and is left out. */
	private static SentenceOnLine random(Random random, String formatter) {
		int length = random.nextInt(10) == 0 ? 0 : 10 + random.nextInt(73);
		double interval = random.nextInt(10) == 0 ? 0 : (1 + random.nextInt(40)) * 0.1;
		return random.nextBoolean() ? SerialText.regular(formatter, length, interval) : SerialText.event(formatter, length, interval);
	}

	@Test
	void moreSentencesLowerNoBound() {
		Random random = new Random(1);
		for (int i = 0; i < 2000; i++) {
			List<SentenceOnLine> few = random(random);
			List<SentenceOnLine> more = new ArrayList<>(few);
			more.add(random.nextInt(few.size() + 1), random(random, "NEW"));
			SerialLoad before = SerialLoad.of(few);
			SerialLoad after = SerialLoad.of(more);
			assertTrue(after.regular().perSecond() >= before.regular().perSecond() - ROUNDING);
			assertTrue(after.total().perSecond() >= before.total().perSecond() - ROUNDING);
			assertTrue(after.busiestSecond() >= before.busiestSecond());
			if (Waiting.of(after, SLOW) instanceof Waiting.Bounded now) {
				Waiting.Bounded then = (Waiting.Bounded) Waiting.of(before, SLOW);
				assertTrue(now.backlog() >= then.backlog() && seconds(now.run()) >= seconds(then.run()) - ROUNDING);
				Map<SentenceOnLine, Double> waits = waits(now);
				waits(then).forEach((sentence, wait) -> assertTrue(waits.get(sentence) >= wait - ROUNDING));
			}
		}
	}

	@Test
	void theOrderOfSentencesChangesNothing() {
		Random random = new Random(2);
		for (int i = 0; i < 2000; i++) {
			List<SentenceOnLine> sentences = random(random);
			List<SentenceOnLine> other = new ArrayList<>(sentences);
			Collections.shuffle(other, random);
			SerialLoad one = SerialLoad.of(sentences);
			SerialLoad shuffled = SerialLoad.of(other);
			assertEquals(one.total().perSecond(), shuffled.total().perSecond(), ROUNDING);
			assertEquals(one.busiestSecond(), shuffled.busiestSecond());
			Waiting waiting = Waiting.of(one, SLOW);
			assertEquals(waiting.getClass(), Waiting.of(shuffled, SLOW).getClass());
			if (waiting instanceof Waiting.Bounded bounded) {
				assertEquals(waits(bounded), waits((Waiting.Bounded) Waiting.of(shuffled, SLOW)));
			}
		}
	}

	@Test
	void twiceTheRateHalvesSharesAndWaits() {
		Random random = new Random(3);
		for (int i = 0; i < 2000; i++) {
			SerialLoad load = SerialLoad.of(random(random));
			assertEquals(load.total().shareOf(CharacterRate.of(SLOW)).fraction() / 2, load.total().shareOf(CharacterRate.of(TWICE)).fraction(), ROUNDING);
			if (Waiting.of(load, SLOW) instanceof Waiting.Bounded slow) {
				Waiting.Bounded fast = (Waiting.Bounded) Waiting.of(load, TWICE);
				assertEquals(slow.backlog(), fast.backlog());
				assertEquals(slow.longest().seconds() / 2, fast.longest().seconds(), ROUNDING);
			}
		}
	}

	/** The devices and ends of a text in another order. */
	@Test
	void theOrderOfDevicesAndEndsChangesNothing() {
		String log = "log : line out : talker, single ended, 4800 baud, drives 2 listeners; sends VHW by out; sends MTW by out\n";
		String dials = "dial : line in1 : listener, isolated, 4800 baud\nprinter : line in1 : listener, rs232\n";
		SerialLineFigures one = SerialText.line(log + dials, "{ from log.out; to dial.in1, printer.in1 }");
		SerialLineFigures other = SerialText.line(dials + log, "{ to printer.in1, dial.in1; from log.out }");
		assertEquals(one.drives(), other.drives());
		assertEquals(one.use(), other.use());
		assertEquals(List.copyOf(one.joints()).stream().collect(Collectors.toSet()), other.joints().stream().collect(Collectors.toSet()));
		assertEquals(one.assumptions(), other.assumptions());
	}

	/** A run that is not followed to its end is longer than any other. */
	private static double seconds(Optional<Duration> run) {
		return run.map(Duration::seconds).orElse(Double.POSITIVE_INFINITY);
	}

	private static Map<SentenceOnLine, Double> waits(Waiting.Bounded waiting) {
		return waiting.sentences().stream().collect(Collectors.toMap(each -> each.sentence().sentence(), each -> each.waits().seconds()));
	}
}
