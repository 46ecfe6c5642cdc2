/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.line.BackboneLength;
import hullwright.analysis.line.BitTiming;
import hullwright.analysis.line.LineFigures;
import hullwright.analysis.line.MeterReading;
import hullwright.analysis.line.SenderLoad;
import hullwright.analysis.line.SignalLevels;
import hullwright.analysis.line.Stub;
import hullwright.quantity.Length;
import hullwright.quantity.Resistance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The signal line of a network in sentences.
 */
final class LineText {

	private final LineFigures line;
	private final Wording wording;

	LineText(LineFigures line, Wording wording) {
		this.line = line;
		this.wording = wording;
	}

	List<String> lines() {
		List<String> lines = new ArrayList<>();
		for (BackboneLength each : line.backbones()) {
			lines.add("Length: backbone " + Wording.metres(each.run()) + "; end to end " + endToEnd(Wording.metres(each.longerOf()), Wording.metres(each.sum()))
					+ each.longerOfAllowance().map(allowed -> "; its cable allows " + Wording.limit(allowed)).orElse("") + ".");
		}
		line.propagation().ifPresent(each -> lines.add("Delay: " + nanoseconds(each.delay().seconds()) + " over " + Wording.metres(each.distance())
				+ " from " + name(each.from()) + " to " + name(each.to()) + "; the bit allows " + nanoseconds(each.allowed().seconds()) + ", "
				+ margin(each.marginOf(BitTiming.USUAL_DELAY)) + "."));
		line.stubs().stream().max(Comparator.comparing(Stub::length)).ifPresent(each -> lines.add("Branches: " + line.stubs().size() + ", together "
				+ Wording.metres(line.stubsTogether()) + "; the longest " + Wording.metres(each.length()) + ", to " + name(each.farthest()) + "."));
		for (MeterReading each : line.meter()) {
			lines.add("Meter, power off, at " + name(each.part()) + ": " + each.reading().map(Wording::ohms).orElse("open")
					+ between(each.lowest(), each.highest()) + ".");
		}
		line.levels().ifPresent(each -> lines.addAll(levels(each)));
		return lines;
	}

	private static String endToEnd(String longerOf, String sum) {
		return longerOf.equals(sum) ? sum + " by both counts of the ends"
				: longerOf + " (the longer of end cable and end drop) or " + sum + " (end drops added)";
	}

	private static String margin(Length margin) {
		return margin.metres() >= 0 ? "another " + Wording.limit(margin) : Wording.metres(new Length(-margin.metres())) + " less than there are";
	}

	private List<String> levels(SignalLevels levels) {
		String level = "Load: senders see " + loads(levels) + ".";
		return levels.areGuaranteed() ? List.of(level)
				: List.of(level, "A sender guarantees its level into " + SenderLoad.LEAST + " to " + SenderLoad.MOST + " only: "
						+ Stream.of(levels.leastLoad(), levels.mostLoad()).filter(each -> !each.isGuaranteed()).distinct()
								.map(each -> name(each.sender()) + " sees " + Wording.ohms(each.load())).collect(Collectors.joining(", "))
						+ ".");
	}

	private static String loads(SignalLevels levels) {
		return Wording.ohms(levels.leastLoad().load(), levels.mostLoad().load());
	}

	private static String between(Optional<Resistance> lowest, Optional<Resistance> highest) {
		return lowest.isEmpty() || highest.isEmpty() || Wording.ohms(lowest.get()).equals(Wording.ohms(highest.get())) ? ""
				: " (" + Wording.ohms(lowest.get(), highest.get()) + ", by the nodes)";
	}

	private String name(String qualified) {
		return wording.name(qualified, line.network());
	}

	private static String nanoseconds(double seconds) {
		return Wording.number(seconds * 1e9, 0) + " ns";
	}
}
