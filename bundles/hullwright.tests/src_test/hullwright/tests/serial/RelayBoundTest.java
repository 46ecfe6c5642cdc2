/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;

import org.junit.jupiter.api.Test;

import hullwright.analysis.serial.SentenceOnLine;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialRelay;
import hullwright.analysis.serial.SerialRelays;
import hullwright.analysis.serial.Waiting;
import hullwright.network.Boat;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Sentence;
import hullwright.tests.serial.RelaySimulation.Telling;

/**
 * What a device holds at most that passes sentences on, and how long they take on the line out, against a simulation that knows
 * nothing of the bounds.
 */
class RelayBoundTest {

	private static final int SETS = 2500;
	private static final int TICKS_A_SECOND = 3840;
	private static final int SLOW = 8;
	/** The characters of the one sentence that passes from the slow line, in the shipped list. */
	private static final int VHW = 39;

	private static Boat boat(int out) {
		return SerialText.boat("""
				log : line out : talker
				ais : line out : talker
				mixer : line in1 : listener; line in2 : listener; line out : talker; passes VHW from in1 to out; passes all from in2 to out
				dial : line in1 : listener
				""", "serial first at 4800 baud { from log.out; to mixer.in1 } serial second at 38400 baud { from ais.out; to mixer.in2 } "
				+ "serial third at " + out + " baud { from mixer.out; to dial.in1 }");
	}

	@Test
	void noMoreIsHeldThanTheBound() {
		Random random = new Random(1);
		Map<Integer, Boat> boats = Map.of(SLOW, boat(4800), 1, boat(38400));
		int bounded = 0;
		double tightness = 0;
		for (int set = 0; set < SETS; set++) {
			int out = random.nextInt(3) == 0 ? 1 : SLOW;
			List<Telling> tellings = random(random, out);
			SerialRelay relay = relay(boats.get(out), tellings);
			if (relay.holds().isEmpty()) {
				assertTrue(relay.drains() == SerialRelay.Drains.NEVER || overloaded(tellings), "no bound for " + tellings);
				continue;
			}
			bounded++;
			int most = 0;
			for (int start = 0; start < 3; start++) {
				boolean together = start == 0;
				int[] first = tellings.stream().mapToInt(each -> together ? 0 : random.nextInt(each.interval())).toArray();
				RelaySimulation simulation = new RelaySimulation(tellings, new int[] { SLOW, 1 }, out, first, 2 * TICKS_A_SECOND);
				assertTrue(simulation.all <= relay.holds().get(), simulation.all + " > " + relay.holds().get() + " of " + tellings);
				for (int i = 0; i < 2; i++) {
					SerialRelay.Input input = relay.inputs().get(i);
					double waiting = input.waiting().orElseThrow().seconds() * input.carries().orElseThrow().perSecond();
					assertTrue(simulation.held[i] <= waiting + 1e-6, "input " + i + ": " + simulation.held[i] + " > " + waiting + " of " + tellings);
				}
				Waiting.Bounded waiting = assertInstanceOf(Waiting.Bounded.class, lines(boats.get(out), tellings).get(2).waiting());
				double takes = waiting.longest().seconds() * TICKS_A_SECOND;
				assertTrue(simulation.took <= takes + 1e-6, simulation.took + " ticks > " + takes + " of " + tellings);
				most = Math.max(most, simulation.all);
			}
			tightness += most / (double) relay.holds().get();
		}
		assertTrue(bounded > 1500, bounded + " sets");
		assertTrue(tightness / bounded > 0.5, "the bound is far off: " + tightness / bounded);
	}

	/**
	 * VHW ten times a second, behind eight sentences that do not pass: when these are out, the VHW that gathered come all at once, and
	 * the line out is too slow for them.
	 */
	@Test
	void whatGatheredBehindOthersComesAtOnce() {
		Boat boat = SerialText.boat("""
				log : line out : talker
				ais : line out : talker
				mixer : line in1 : listener; line in2 : listener; line out : talker; passes VHW from in1 to out
				""", "serial first at 38400 baud { from log.out; to mixer.in1 } serial second at 38400 baud { from ais.out; to mixer.in2 } "
				+ "serial third at 4800 baud { from mixer.out }");
		List<Telling> tellings = new ArrayList<>(Collections.nCopies(8, new Telling(0, 82, 2 * TICKS_A_SECOND, false)));
		tellings.add(new Telling(0, VHW, TICKS_A_SECOND / 10, true));
		int took = new RelaySimulation(tellings, new int[] { 1 }, SLOW, new int[tellings.size()], 2 * TICKS_A_SECOND).took;
		Waiting.Bounded waiting = assertInstanceOf(Waiting.Bounded.class, lines(boat, tellings).get(2).waiting());
		assertTrue(took > VHW * SLOW, "more than one is due at once: " + took);
		assertTrue(took <= waiting.longest().seconds() * TICKS_A_SECOND + 1e-6, took + " ticks > " + waiting);
	}

	private static boolean overloaded(List<Telling> tellings) {
		return share(tellings, 0) >= 1.0 / SLOW || share(tellings, 1) >= 1;
	}

	/** The characters in a tick. */
	private static double share(List<Telling> tellings, int input) {
		return tellings.stream().filter(each -> each.input() == input).mapToDouble(each -> each.length() / (double) each.interval()).sum();
	}

	private static SerialRelay relay(Boat boat, List<Telling> tellings) {
		return SerialRelays.of(boat, lines(boat, tellings)).get(0);
	}

	private static List<SerialLineFigures> lines(Boat boat, List<Telling> tellings) {
		return SerialLineFigures.of(boat, line -> switch (line.name()) {
		case "Skerry.first" -> sentences(boat, tellings, each -> each.input() == 0);
		case "Skerry.second" -> sentences(boat, tellings, each -> each.input() == 1);
		default -> sentences(boat, tellings, Telling::passes).stream().map(each -> new SentenceOnLine("Skerry.mixer", each.use(), each.timing())).toList();
		});
	}

	private static List<SentenceOnLine> sentences(Boat boat, List<Telling> tellings, Predicate<Telling> which) {
		return tellings.stream().filter(which).map(each -> sentence(boat, each)).toList();
	}

	private static SentenceOnLine sentence(Boat boat, Telling telling) {
		SentenceOnLine any = SerialText.regular("VLW", telling.length(), telling.interval() / (double) TICKS_A_SECOND);
		return telling.input() == 1 || !telling.passes() ? any : new SentenceOnLine(any.talker(), new MessageUse(passed(boat), Optional.empty()), any.timing());
	}

	/** The one sentence that passes from the slow line. */
	private static Sentence passed(Boat boat) {
		return (Sentence) boat.devices().get(2).settings().passes().get(0).messages().orElseThrow().get(0);
	}

	/** One to four sentences on each line; of the slow one some pass, of the fast one all. */
	private static List<Telling> random(Random random, int out) {
		List<Telling> tellings = new ArrayList<>();
		double share = random.nextDouble() / out;
		int count = 2 + random.nextInt(6);
		for (int i = 0; i < count; i++) {
			int input = i < 2 ? i : random.nextInt(2);
			boolean passes = input == 1 || random.nextBoolean();
			int length = input == 0 && passes ? VHW : 5 + random.nextInt(78);
			double part = Math.min(share / count * (0.5 + random.nextDouble()), input == 0 ? 0.9 / SLOW / count : 0.9 / count);
			tellings.add(new Telling(input, length, (int) Math.min(TICKS_A_SECOND * 2, Math.ceil(length / part)), passes));
		}
		return tellings;
	}
}
