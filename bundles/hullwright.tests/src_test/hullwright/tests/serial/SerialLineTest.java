/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static hullwright.tests.serial.SerialText.line;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import hullwright.analysis.serial.CharacterRate;
import hullwright.analysis.serial.LineRate;
import hullwright.analysis.serial.SentenceLeftOut;
import hullwright.analysis.serial.SerialAssumption;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialProblem;
import hullwright.analysis.serial.Waiting;
import hullwright.network.DevicePortRef;
import hullwright.quantity.BitRate;

/**
 * What goes over a line against what it carries: hand calculation from the lengths of the shipped list of sentences.
 */
class SerialLineTest {

	private static final BitRate SLOW = new BitRate(4800);
	private static final BitRate FAST = new BitRate(38400);

	private static final String LOG = "log : line out : talker, differential, 4800 baud, drives 3 listeners; sends VHW every 1 s by out; "
			+ "sends VLW every 1 s by out; sends MTW every 2 s by out\n";
	private static final String DIAL = "dial : line in1 : listener, isolated, 4800 baud or 38400 baud, draws 2 mA, buffers 2 s\n";
	private static final String BETWEEN = "from log.out; to dial.in1";

	private static DevicePortRef port(String device, String port) {
		return new DevicePortRef("Skerry." + device, port);
	}

	/** 4800 bit/s are 480 characters a second, 38400 are 3840: digital-interface appendices of public installation manuals. */
	@Test
	void aCharacterTakesTenBits() {
		assertEquals(480, CharacterRate.of(SLOW).perSecond());
		assertEquals(3840, CharacterRate.of(FAST).perSecond());
	}

	/** VHW 39, VLW 40 and half of MTW 18: 88 of 480. */
	@Test
	void aLogTakesAFifthOfItsLine() {
		SerialLineFigures log = line(LOG + DIAL, "at 4800 baud { " + BETWEEN + " }");
		assertEquals(List.of(), log.problems());
		assertEquals(88, log.load().regular().perSecond(), 1e-9);
		assertEquals(88 / 480.0, log.use().orElseThrow().regular().fraction(), 1e-12);
		assertEquals(0.8 - 88 / 480.0, log.use().orElseThrow().margin().fraction(), 1e-12);
		assertEquals(39 + 40 + 18, log.load().busiestSecond());
	}

	/** All three due at once: 97 characters, 202 ms; the shortest, if last, waits for 79 of them. */
	@Test
	void whatIsDueTogetherWaits() {
		Waiting.Bounded waiting = assertInstanceOf(Waiting.Bounded.class, line(LOG + DIAL, "at 4800 baud { " + BETWEEN + " }").waiting());
		assertEquals(97, waiting.backlog());
		assertEquals(97 / 480.0, waiting.longest().seconds(), 1e-12);
		assertEquals(79 / 480.0, waiting.sentences().get(2).waits().seconds(), 1e-12);
		assertFalse(waiting.sentences().get(2).mayBeOvertaken());
	}

	@Test
	void theOnlyRateOfBothIsTheRateOfTheLine() {
		SerialLineFigures log = line(LOG + DIAL, "{ " + BETWEEN + " }");
		assertEquals(new LineRate(Optional.of(SLOW), LineRate.Basis.ONLY_SHARED), log.rate());
		assertEquals(List.of(), log.problems());
		assertEquals(List.of(SLOW), log.sharedRates());
	}

	@Test
	void twoRatesOfBothLeaveTheLineOpen() {
		SerialLineFigures open = line("log : line out : talker, 4800 baud or 38400 baud; sends VHW by out\n" + DIAL, "{ " + BETWEEN + " }");
		assertEquals(List.of(new SerialProblem.RateOpen(List.of(SLOW, FAST))), open.problems());
		assertEquals(Optional.empty(), open.use());
		assertEquals(39, open.load().regular().perSecond(), 1e-9);
		assertEquals(new Waiting.Unbounded(Waiting.Reason.RATE_UNKNOWN), open.waiting());
	}

	@Test
	void endsWithoutACommonRateAreTold() {
		SerialLineFigures none = line("log : line out : talker, 4800 baud\nais : line in1 : listener, 38400 baud", "{ from log.out; to ais.in1 }");
		assertEquals(List.of(new SerialProblem.NoCommonRate(List.of(new SerialProblem.PossibleRates(port("log", "out"), List.of(SLOW)),
				new SerialProblem.PossibleRates(port("ais", "in1"), List.of(FAST))))), none.problems());
	}

	@Test
	void anEndThatCannotBeSetToTheRateIsTold() {
		SerialLineFigures fast = line(LOG + DIAL, "at 38400 baud { " + BETWEEN + " }");
		assertEquals(List.of(new SerialProblem.RateNotPossible(port("log", "out"), FAST, List.of(SLOW))), fast.problems());
		assertEquals(88 / 3840.0, fast.use().orElseThrow().regular().fraction(), 1e-12);
	}

	@Test
	void aPortThatStatesNoRateFollowsTheOthers() {
		SerialLineFigures log = line(LOG + "dial : line in1 : listener, isolated, draws 1 mA", "{ " + BETWEEN + " }");
		assertEquals(Optional.of(SLOW), log.rate().rate());
		assertTrue(log.assumptions().contains(new SerialAssumption(SerialAssumption.Kind.PORT_RATE, List.of("Skerry.dial.in1"))));
	}

	@Test
	void aPortTalksAtOneRate() {
		List<SerialLineFigures> lines = SerialLineFigures.of(SerialText.boat("log : line out : talker\n" + DIAL + "other : line in1 : listener",
				"serial first at 4800 baud { " + BETWEEN + " } serial second at 38400 baud { from log.out; to other.in1 }"));
		assertEquals(List.of(), lines.get(0).problems());
		assertEquals(List.of(new SerialProblem.PortAtTwoRates(port("log", "out"), List.of("Skerry.first"))), lines.get(1).problems());
	}

	@Test
	void nobodySaysHowFast() {
		SerialLineFigures silent = line("log : line out : talker\ndial : line in1 : listener", "{ " + BETWEEN + " }");
		assertEquals(List.of(new SerialProblem.RateOpen(List.of())), silent.problems());
	}

	/** Of a log that tells three sentences the line carries one, at the interval of its talker. */
	@Test
	void theTextMaySayWhatALineCarries() {
		SerialLineFigures one = line(LOG + DIAL, "at 4800 baud { " + BETWEEN + "; carries VLW }");
		assertEquals(40, one.load().regular().perSecond(), 1e-9);
		SerialLineFigures often = line("log : line out : talker, 4800 baud; sends HDG every 100 ms by out\n" + DIAL,
				"at 4800 baud { " + BETWEEN + "; carries HDG }");
		assertEquals(250, often.load().regular().perSecond(), 1e-9);
		SerialLineFigures seldom = line(LOG + DIAL, "at 4800 baud { " + BETWEEN + "; carries VLW every 4 s }");
		assertEquals(10, seldom.load().regular().perSecond(), 1e-9);
	}

	/** A gateway turns it, and the text says what comes out. */
	@Test
	void whatTheTalkerDoesNotTellOfItselfIsCarriedAsStated() {
		SerialLineFigures carried = line("log : line out : talker, 4800 baud\n" + DIAL, "at 4800 baud { " + BETWEEN + "; carries DPT every 500 ms }");
		assertEquals(40, carried.load().regular().perSecond(), 1e-9);
		assertEquals("Skerry.log", carried.load().counted().get(0).sentence().talker());
	}

	@Test
	void sentencesOfOtherPortsAreNotOnTheLine() {
		SerialLineFigures two = line("log : line out : talker, 4800 baud; line aux : talker, 4800 baud; sends VHW by aux; sends VLW\n" + DIAL,
				"at 4800 baud { " + BETWEEN + " }");
		assertEquals(List.of("VLW"), two.load().counted().stream().map(each -> each.sentence().sentence().formatter()).toList());
	}

	/** DSC has 56 characters; at least 5 s apart it takes 11.2 characters a second at most, and comes once in the busiest second. */
	@Test
	void eventsCountAsOftenAsTheyMayOccur() {
		SerialLineFigures radio = line("log : line out : talker, 4800 baud; sends DSC on event, at least 5 s apart by out; sends DSE on event by out\n"
				+ DIAL, "at 4800 baud { " + BETWEEN + " }");
		assertEquals(0, radio.load().regular().perSecond());
		assertEquals(11.2, radio.load().events().perSecond(), 1e-9);
		assertEquals(56, radio.load().busiestSecond());
		assertEquals(List.of(SentenceLeftOut.Reason.EVENT_WITHOUT_LEAST_INTERVAL), radio.load().leftOut().stream().map(SentenceLeftOut::reason).toList());
		assertEquals("DSE", radio.load().leftOut().get(0).sentence().sentence().formatter());
	}

	/** Heading ten times a second is 52 % of 4800 bit/s, which trade lists have at 52 %; twice as much is 104 %. */
	@Test
	void aLineThatIsAskedForMoreThanItCarriesNeverDrains() {
		String compass = "log : line out : talker, 4800 baud; sends HDG every 100 ms by out; sends HDG every 100 ms by out\n";
		SerialLineFigures full = line(compass + DIAL, "at 4800 baud { " + BETWEEN + " }");
		SerialProblem.NeverDrains problem = assertInstanceOf(SerialProblem.NeverDrains.class, full.problems().get(0));
		assertEquals(500 / 480.0, problem.asked().fraction(), 1e-12);
		assertEquals(new Waiting.Unbounded(Waiting.Reason.OVERLOAD), full.waiting());
		assertEquals(List.of(), full.buffers());
	}

	@Test
	void aFullLineNeverDrainsEither() {
		SerialLineFigures full = SerialText.carrying(4800, SerialText.regular("HDG", 48, 0.1));
		assertEquals(1, full.use().orElseThrow().regular().fraction(), 1e-12);
		assertInstanceOf(SerialProblem.NeverDrains.class, full.problems().get(0));
	}

	@Test
	void eventsMayFloodALine() {
		SerialLineFigures flood = SerialText.carrying(4800, SerialText.event("VDM", 82, 0.03), SerialText.regular("GLL", 47, 1));
		assertInstanceOf(SerialProblem.EventsMayFlood.class, flood.problems().get(0));
		assertEquals(new Waiting.Unbounded(Waiting.Reason.OVERLOAD), flood.waiting());
		assertEquals(47 / 480.0, flood.use().orElseThrow().regular().fraction(), 1e-12);
	}

	/** HDG every 100 ms behind 160 characters of others: 385 ms from due to told, so that three more are due meanwhile. */
	@Test
	void aSentenceMayBeDueAgainBeforeItIsOut() {
		Waiting.Bounded waiting = assertInstanceOf(Waiting.Bounded.class,
				SerialText.carrying(4800, SerialText.regular("HDG", 25, 0.1), SerialText.regular("RMC", 80, 1), SerialText.regular("RMB", 80, 1)).waiting());
		assertEquals(185 / 480.0, waiting.longest().seconds(), 1e-12);
		assertTrue(waiting.sentences().get(0).mayBeOvertaken());
		assertFalse(waiting.sentences().get(1).mayBeOvertaken());
	}

	/** A buffer of 2 s, as a multiplexer's manual has it, takes a second of characters without a pause, and not one of 200 ms. */
	@Test
	void aBufferTakesABurstOrNot() {
		assertTrue(line(LOG + DIAL, "at 4800 baud { " + BETWEEN + " }").buffers().get(0).fits());
		SerialLineFigures small = line(LOG + "dial : line in1 : listener, 4800 baud, buffers 200 ms", "{ " + BETWEEN + " }");
		assertFalse(small.buffers().get(0).fits());
		assertEquals(97 / 480.0, small.buffers().get(0).run().orElseThrow().seconds(), 1e-12);
	}
}
