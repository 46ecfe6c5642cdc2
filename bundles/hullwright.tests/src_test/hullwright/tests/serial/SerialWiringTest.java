/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.serial;

import static hullwright.tests.serial.SerialText.line;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import hullwright.analysis.serial.Joint;
import hullwright.analysis.serial.LevelFit;
import hullwright.analysis.serial.SerialAssumption;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.SerialProblem;
import hullwright.analysis.serial.TalkerDrive;
import hullwright.analysis.serial.Waiting;
import hullwright.network.DevicePortRef;
import hullwright.network.part.SerialPort.Level;

/**
 * What the ends of a line are to each other: number of listeners, levels, grounds, and who talks at all. What is expected is what
 * digital-interface appendices of public installation manuals say, unless common practice is named.
 */
class SerialWiringTest {

	private static final String LISTENERS = """
			a : line in1 : listener, isolated, 4800 baud, draws 2 mA
			b : line in1 : listener, isolated, 4800 baud
			c : line in1 : listener, isolated, 4800 baud, draws 2 mA
			d : line in1 : listener, isolated, 4800 baud, draws 2 mA
			""";
	private static final String ALL = "{ from log.out; to a.in1, b.in1, c.in1, d.in1 }";

	private static DevicePortRef port(String device, String port) {
		return new DevicePortRef("Skerry." + device, port);
	}

	private static TalkerDrive drive(String talker) {
		return line("log : line out : talker, 4800 baud" + talker + "\n" + LISTENERS, ALL).drives().get(0);
	}

	/** Display makers: up to three listeners; a multiplexer maker: up to four. */
	@Test
	void aTalkerDrivesAsManyListenersAsItsCatalogSays() {
		assertEquals(Optional.of(false), drive(", drives 3 listeners").suffices());
		assertEquals(Optional.of(-1), drive(", drives 3 listeners").listenersLeft());
		assertEquals(Optional.of(true), drive(", drives 4 listeners").suffices());
	}

	/** Four listeners of 2 mA draw 8 mA, that of the one whose catalog is silent included: the most a listener may draw. */
	@Test
	void listenersDrawFromTheTalker() {
		TalkerDrive exact = drive(", drives 8 mA");
		assertEquals(0.008, exact.drawn().amperes(), 1e-12);
		assertEquals(Optional.of(true), exact.suffices());
		assertEquals(0, exact.currentLeft().orElseThrow().amperes(), 1e-12);
		assertEquals(Optional.of(false), drive(", drives 7 mA").suffices());
		assertEquals(List.of(new SerialAssumption(SerialAssumption.Kind.LISTENER_DRAW, List.of("Skerry.b.in1")),
				new SerialAssumption(SerialAssumption.Kind.LISTENER_LEVEL, List.of("Skerry.a.in1", "Skerry.b.in1", "Skerry.c.in1", "Skerry.d.in1"))),
				line("log : line out : talker, 4800 baud, drives 8 mA\n" + LISTENERS, ALL).assumptions());
	}

	@Test
	void noLimitIsInventedWhereNoneIsStated() {
		assertEquals(Optional.empty(), drive("").suffices());
		assertEquals(4, drive("").listeners());
	}

	/** Two lines of the text from one port are one circuit. */
	@Test
	void listenersOnAnotherLineOfTheSamePortCount() {
		List<SerialLineFigures> lines = SerialLineFigures.of(SerialText.boat("log : line out : talker, 4800 baud, drives 3 listeners\n" + LISTENERS,
				"serial first { from log.out; to a.in1, b.in1 } serial second { from log.out; to c.in1, d.in1 }"));
		assertEquals(List.of(Optional.of(-1), Optional.of(-1)), lines.stream().map(each -> each.drives().get(0).listenersLeft()).toList());
		assertEquals(List.of(), lines.stream().flatMap(each -> each.problems().stream()).toList());
	}

	private static LevelFit.Verdict verdict(Level talker, Level listener) {
		return LevelFit.of(talker, listener).verdict();
	}

	@Test
	void levelsThatFit() {
		assertEquals(new LevelFit(LevelFit.Verdict.FITS, LevelFit.Reason.SAME_LEVEL), LevelFit.of(Level.DIFFERENTIAL, Level.DIFFERENTIAL));
		assertEquals(LevelFit.Verdict.FITS, verdict(Level.RS232, Level.RS232));
		assertEquals(LevelFit.Verdict.FITS, verdict(Level.SINGLE_ENDED, Level.SINGLE_ENDED));
		// signal to A, and B to the talker's ground: public page of a multiplexer's maker
		assertEquals(new LevelFit(LevelFit.Verdict.FITS, LevelFit.Reason.B_TO_GROUND_OF_TALKER), LevelFit.of(Level.SINGLE_ENDED, Level.DIFFERENTIAL));
	}

	@Test
	void levelsThatNoStandardCovers() {
		// A into the input of a computer often works, 0 and 5 V against a threshold of 3 V: public page on the electrical interface
		assertEquals(new LevelFit(LevelFit.Verdict.OUT_OF_STANDARD, LevelFit.Reason.BELOW_THRESHOLD_OF_RS232), LevelFit.of(Level.DIFFERENTIAL, Level.RS232));
		assertEquals(LevelFit.Verdict.OUT_OF_STANDARD, verdict(Level.SINGLE_ENDED, Level.RS232));
		// a listener withstands 15 V between its lines and to ground
		assertEquals(new LevelFit(LevelFit.Verdict.OUT_OF_STANDARD, LevelFit.Reason.RS232_WITHIN_15_V), LevelFit.of(Level.RS232, Level.DIFFERENTIAL));
		assertEquals(LevelFit.Verdict.OUT_OF_STANDARD, verdict(Level.RS232, Level.SINGLE_ENDED));
		// common practice
		assertEquals(LevelFit.Verdict.OUT_OF_STANDARD, verdict(Level.DIFFERENTIAL, Level.SINGLE_ENDED));
	}

	@Test
	void levelsThatNobodyStatesAreNotJudged() {
		Stream.of(Level.values()).forEach(each -> {
			assertEquals(LevelFit.Verdict.UNKNOWN, verdict(Level.UNSTATED, each));
			assertEquals(LevelFit.Verdict.UNKNOWN, verdict(each, Level.UNSTATED));
		});
	}

	private static Joint joint(String talker, String listener) {
		return line("log : line out : talker, 4800 baud, " + talker + "\na : line in1 : listener, 4800 baud" + listener, "{ from log.out; to a.in1 }").joints().get(0);
	}

	/** An isolated input has no ground to refer to, so it takes the signal between two wires, as the listeners of the standard do. */
	@Test
	void anIsolatedListenerIsTakenForDifferential() {
		assertEquals(LevelFit.Verdict.FITS, joint("differential", ", isolated").level().verdict());
		assertEquals(LevelFit.Verdict.UNKNOWN, joint("differential", "").level().verdict());
	}

	@Test
	void aLineWithoutIsolationJoinsGrounds() {
		assertFalse(joint("differential", ", isolated").currentPath());
		assertFalse(joint("differential, isolated", ", rs232").currentPath());
		assertTrue(joint("differential", ", rs232").currentPath());
	}

	@Test
	void twoTalkersDriveAgainstEachOther() {
		SerialLineFigures two = line("log : line out : talker, differential, 4800 baud; sends VHW by out\npc : line com : talker, rs232, 4800 baud\n" + LISTENERS,
				"{ from log.out, pc.com; to a.in1 }");
		assertEquals(List.of(new SerialProblem.SeveralTalkers(List.of(port("log", "out"), port("pc", "com")))), two.problems());
		assertEquals(new Joint(port("log", "out"), port("pc", "com"), new LevelFit(LevelFit.Verdict.DOES_NOT_FIT, LevelFit.Reason.OUTPUT_AGAINST_OUTPUT), true),
				two.joints().get(0));
		assertEquals(new Waiting.Unbounded(Waiting.Reason.SEVERAL_TALKERS), two.waiting());
		assertEquals(2, two.drives().size());
	}

	/** Two lines of the text that end at one input join two outputs, too, which is told once; two from one talker do not. */
	@Test
	void oneInputHearsOneTalker() {
		List<SerialLineFigures> lines = SerialLineFigures.of(SerialText.boat("log : line out : talker, 4800 baud\nwind : line out : talker, 4800 baud\n" + LISTENERS,
				"serial first { from log.out; to a.in1, b.in1 } serial second { from wind.out; to a.in1 } serial third { from log.out; to b.in1 }"));
		assertEquals(List.of(), lines.get(0).problems());
		assertEquals(List.of(new SerialProblem.InputShared(port("a", "in1"), List.of("Skerry.first"))), lines.get(1).problems());
		assertEquals(List.of(), lines.get(2).problems());
	}

	@Test
	void portsThatCannotDoWhatTheyAreFor() {
		SerialLineFigures wrong = line("log : line in1 : listener, 4800 baud\npc : line out : talker, rs232, 4800 baud", "{ from log.in1; to pc.out }");
		assertEquals(List.of(new SerialProblem.CannotTalk(port("log", "in1")), new SerialProblem.CannotListen(port("pc", "out"))), wrong.problems());
		assertEquals(LevelFit.Verdict.DOES_NOT_FIT, wrong.joints().get(0).level().verdict());
	}

	@Test
	void aDeviceThatHearsItself() {
		SerialLineFigures self = line("pc : line com : talker, listener, rs232, 4800 baud; sends APB by com", "{ from pc.com; to pc.com }");
		assertEquals(List.of(new SerialProblem.HearsItself("Skerry.pc")), self.problems());
		assertEquals(List.of(), self.joints());
		assertEquals(0, self.drives().get(0).listeners());
	}

	@Test
	void aLineToNobodyOrFromNobody() {
		assertEquals(List.of(new SerialProblem.NoListener()), line("log : line out : talker, 4800 baud; sends VHW by out", "{ from log.out }").problems());
		SerialLineFigures deaf = line(LISTENERS, "{ to a.in1; carries VHW }");
		assertEquals(List.of(new SerialProblem.NoTalker()), deaf.problems());
		assertEquals(List.of(), deaf.drives());
	}
}
