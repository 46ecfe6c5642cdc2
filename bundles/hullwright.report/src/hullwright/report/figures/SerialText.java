/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.serial.AisWorstCase;
import hullwright.analysis.serial.BufferFit;
import hullwright.analysis.serial.Joint;
import hullwright.analysis.serial.LevelFit;
import hullwright.analysis.serial.LineUse;
import hullwright.analysis.serial.SentenceLeftOut;
import hullwright.analysis.serial.SerialLineFigures;
import hullwright.analysis.serial.TalkerDrive;
import hullwright.analysis.serial.Waiting;
import hullwright.network.DevicePortRef;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The serial lines of a boat: how full they are, how long sentences wait, and whether their ends fit together.
 */
final class SerialText {

	private static final List<LevelFit.Verdict> WORST_FIRST = List.of(LevelFit.Verdict.DOES_NOT_FIT, LevelFit.Verdict.OUT_OF_STANDARD,
			LevelFit.Verdict.UNKNOWN, LevelFit.Verdict.FITS);

	private final List<SerialLineFigures> lines;
	private final Wording wording;

	SerialText(List<SerialLineFigures> lines, Wording wording) {
		this.lines = lines;
		this.wording = wording;
	}

	/** What is told on each line against what it carries, in characters a second, and how long a sentence takes at most until it is out. */
	TextTable loads() {
		TextTable table = TextTable.worstFirst("Line", "Signals at", ">Carries", ">Regular", ">Used", ">With events", ">To " + Wording.perCent(LineUse.PRACTICE.fraction()), ">Busiest", ">Takes at most");
		for (SerialLineFigures line : fullestFirst()) {
			table.row(name(line), line.rate().rate().map(SerialProblemText::rate).orElse("-"),
					line.use().map(use -> characters(use.carries().perSecond())).orElse("-"), characters(line.load().regular().perSecond()),
					line.use().map(use -> Wording.perCent(use.regular().fraction())).orElse("-"),
					line.use().map(use -> Wording.perCent(use.withEvents().fraction())).orElse("-"),
					line.use().map(LineUse::margin).map(margin -> Wording.perCent(margin.fraction())).orElse("-"),
					String.valueOf(line.load().busiestSecond()), waits(line.waiting()));
		}
		return table;
	}

	private List<SerialLineFigures> fullestFirst() {
		return lines.stream().sorted(Comparator.comparing((SerialLineFigures line) -> line.use().map(use -> -use.withEvents().fraction())
				.orElse(Double.NEGATIVE_INFINITY))).toList();
	}

	private static String waits(Waiting waiting) {
		if (waiting instanceof Waiting.Bounded bounded) {
			return bounded.sentences().isEmpty() ? "-" : Wording.time(bounded.longest());
		}
		return "no bound";
	}

	/** The talker of each line beside its listeners. */
	TextTable ends() {
		TextTable table = TextTable.worstFirst("Line", "Talker", ">Listeners", ">Can drive", ">Draw", ">Can give", "Levels", "Grounds", "Shield");
		for (SerialLineFigures line : lines.stream().sorted(Comparator.comparing(line -> worst(line.joints()))).toList()) {
			for (TalkerDrive drive : line.drives()) {
				List<Joint> joints = line.joints().stream().filter(each -> each.talker().equals(drive.talker())).toList();
				table.row(name(line), port(drive.talker()), String.valueOf(drive.listeners()), drive.drivesListeners().map(String::valueOf).orElse(""),
						Wording.milliamperes(drive.drawn()), drive.drive().map(Wording::milliamperes).orElse(""), levels(joints),
						joints.stream().anyMatch(Joint::currentPath) ? "joined" : "apart", line.line().earthsShield() ? "earthed" : "");
			}
		}
		return table;
	}

	private static String levels(List<Joint> joints) {
		return joints.isEmpty() ? "-" : word(WORST_FIRST.get(worst(joints)));
	}

	/** The place of the worst verdict, the worst of all being the first. */
	private static int worst(List<Joint> joints) {
		return joints.stream().mapToInt(each -> WORST_FIRST.indexOf(each.level().verdict())).min().orElse(WORST_FIRST.size());
	}

	private static String word(LevelFit.Verdict verdict) {
		return switch (verdict) {
		case FITS -> "fit";
		case OUT_OF_STANDARD -> "out of standard";
		case DOES_NOT_FIT -> "do not fit";
		case UNKNOWN -> "unknown";
		};
	}

	/** What the tables do not show of the load. */
	List<String> loadNotes() {
		List<String> notes = new ArrayList<>(ais());
		for (SerialLineFigures line : lines) {
			if (line.waiting() instanceof Waiting.Bounded bounded) {
				List<String> overtaken = bounded.sentences().stream().filter(Waiting.OfSentence::mayBeOvertaken)
						.map(each -> each.sentence().sentence().use() + " every " + Wording.time(each.sentence().interval())).distinct().toList();
				if (!overtaken.isEmpty()) {
					notes.add("On " + name(line) + " the next may be due before one is out: " + wording.some(overtaken, "") + ".");
				}
			}
			line.buffers().stream().filter(each -> !each.fits()).forEach(each -> notes.add(buffer(line, each)));
		}
		Map<SentenceLeftOut.Reason, Set<String>> leftOut = new EnumMap<>(SentenceLeftOut.Reason.class);
		lines.forEach(line -> line.load().leftOut().forEach(
				each -> leftOut.computeIfAbsent(each.reason(), none -> new LinkedHashSet<>()).add(each.sentence().use() + " on " + name(line))));
		leftOut.forEach((reason, told) -> notes.add("Not counted, since " + word(reason) + ": " + wording.some(List.copyOf(told), "") + "."));
		return notes;
	}

	private List<String> ais() {
		List<String> shares = new ArrayList<>();
		for (SerialLineFigures line : lines) {
			line.ais().flatMap(AisWorstCase::taken).ifPresent(share -> shares.add(Wording.perCent(share.fraction()) + " of " + name(line)
					+ (line.ais().get().fits().orElseThrow() ? "" : " (too slow)")));
		}
		return lines.stream().flatMap(line -> line.ais().stream()).findFirst()
				.map(ais -> "AIS with both channels full tells " + characters(ais.tells().perSecond()) + " characters a second"
						+ (shares.isEmpty() ? "." : ": " + wording.some(shares, "") + "."))
				.stream().toList();
	}

	private String buffer(SerialLineFigures line, BufferFit buffer) {
		return "The buffer of " + port(buffer.listener()) + " holds " + Wording.time(buffer.holds()) + ", and on " + name(line) + " characters come for "
				+ buffer.run().map(Wording::time).orElse("more than 10 s") + " without a pause: unless they are taken out meanwhile, some are lost.";
	}

	private static String word(SentenceLeftOut.Reason reason) {
		return switch (reason) {
		case EVENT_WITHOUT_LEAST_INTERVAL -> "events tell it and nothing says how often at most";
		case TIMING_UNSTATED -> "nothing says when it is told";
		case LENGTH_UNSTATED -> "nothing says how long it is";
		case LENGTH_IMPOSSIBLE -> "its length cannot be";
		case INTERVAL_IMPOSSIBLE -> "its interval cannot be";
		};
	}

	/** What the tables do not show of the ends: how levels go together that differ, talkers that are asked for too much. */
	List<String> endNotes() {
		Map<LevelFit.Reason, Set<String>> levels = new EnumMap<>(LevelFit.Reason.class);
		Set<String> tooWeak = new LinkedHashSet<>();
		Set<String> unknown = new LinkedHashSet<>();
		for (SerialLineFigures line : lines) {
			line.joints().forEach(each -> levels.computeIfAbsent(each.level().reason(), none -> new LinkedHashSet<>())
					.add(port(each.talker()) + " to " + port(each.other())));
			for (TalkerDrive drive : line.drives()) {
				if (drive.isOpen()) {
					unknown.add(port(drive.talker()));
				} else if (!drive.suffices().orElse(true)) {
					tooWeak.add(port(drive.talker()));
				}
			}
		}
		levels.remove(LevelFit.Reason.SAME_LEVEL);
		List<String> notes = new ArrayList<>();
		levels.forEach((reason, joints) -> notes.add(word(reason) + ": " + wording.some(List.copyOf(joints), "") + "."));
		if (!tooWeak.isEmpty()) {
			notes.add("Too many listeners for the talker: " + wording.some(List.copyOf(tooWeak), "") + ".");
		}
		if (!unknown.isEmpty()) {
			notes.add("Nothing says how many listeners the talker drives: " + wording.some(List.copyOf(unknown), "") + ".");
		}
		return notes;
	}

	private static String word(LevelFit.Reason reason) {
		return switch (reason) {
		case SAME_LEVEL -> "Both signal the same way";
		case B_TO_GROUND_OF_TALKER -> "The one signal wire goes to A, the talker's own ground to B";
		case A_TO_SINGLE_INPUT -> "No standard covers a pair into one wire; A to the input, B open, grounds joined mostly works";
		case BELOW_THRESHOLD_OF_RS232 -> "No standard covers A into an RS-232 input; it often works, 0 and 5 V against thresholds of 3 V";
		case RS232_WITHIN_15_V -> "No standard covers RS-232 into such an input; a listener withstands its 15 V";
		case OUTPUT_AGAINST_OUTPUT -> "Two outputs drive against each other";
		case UNSTATED -> "The catalogs do not say how both ends signal";
		};
	}

	private String name(SerialLineFigures line) {
		return wording.name(line.line().name());
	}

	private String port(DevicePortRef port) {
		return wording.name(port.device() + "." + port.port());
	}

	private static String characters(double number) {
		return Wording.number(number, 0);
	}
}
