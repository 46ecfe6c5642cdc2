/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.line.BackboneLength;
import hullwright.analysis.line.BitTiming;
import hullwright.analysis.line.LineFigures;
import hullwright.analysis.line.MeterReading;
import hullwright.analysis.line.Stub;
import hullwright.analysis.line.SignalLevel;
import hullwright.quantity.Resistance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

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
			lines.add("Length: backbone " + Wording.metres(each.run()) + "; end to end " + Wording.metres(each.longerOf())
					+ " (the longer of end cable and end drop) or " + Wording.metres(each.sum()) + " (end drops added)"
					+ each.longerOfAllowance().map(allowed -> "; its cable allows " + Wording.metres(allowed)).orElse("") + ".");
		}
		line.propagation().ifPresent(each -> lines.add("Delay: " + nanoseconds(each.delay().seconds()) + " over " + Wording.metres(each.distance())
				+ " from " + name(each.from()) + " to " + name(each.to()) + "; the bit allows " + nanoseconds(each.allowed().seconds()) + ", another "
				+ Wording.metres(each.marginOf(BitTiming.USUAL_DELAY)) + "."));
		line.stubs().stream().max(Comparator.comparing(Stub::length)).ifPresent(each -> lines.add("Branches: " + line.stubs().size() + ", together "
				+ Wording.metres(line.stubsTogether()) + "; the longest " + Wording.metres(each.length()) + ", to " + name(each.farthest()) + "."));
		for (MeterReading each : line.meter()) {
			lines.add("Meter, power off, at " + name(each.part()) + ": " + each.reading().map(Wording::ohms).orElse("open")
					+ between(each.lowest(), each.highest()) + ".");
		}
		line.level().ifPresent(each -> lines.add(level(each)));
		return lines;
	}

	private String level(SignalLevel level) {
		return "Level: " + Wording.volts(level.heard()) + " at " + name(level.receiver()) + " when " + name(level.sender()) + " sends "
				+ Wording.volts(level.sent()) + " into " + Wording.ohms(level.load())
				+ (level.isGuaranteed() ? "" : ", which lies outside the 50 to 65 ohm for which that is guaranteed") + ".";
	}

	private static String between(Optional<Resistance> lowest, Optional<Resistance> highest) {
		return lowest.isEmpty() || highest.isEmpty() || Wording.ohms(lowest.get()).equals(Wording.ohms(highest.get())) ? ""
				: " (" + Wording.number(lowest.get().ohms(), 1) + " to " + Wording.ohms(highest.get()) + ", by the nodes)";
	}

	private String name(String qualified) {
		return wording.name(qualified, line.network());
	}

	private static String nanoseconds(double seconds) {
		return Wording.number(seconds * 1e9, 0) + " ns";
	}
}
