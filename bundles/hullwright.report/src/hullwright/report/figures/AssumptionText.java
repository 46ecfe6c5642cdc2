/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.Figures;
import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.line.LineAssumption;
import hullwright.analysis.power.Assumption;
import hullwright.analysis.power.Conditions;
import hullwright.analysis.serial.SerialAssumption;
import hullwright.analysis.serial.TalkerDrive;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * What was assumed where a text is silent, in words.
 */
final class AssumptionText {

	private final Figures figures;
	private final BoatElectrics boat;
	private final Wording wording;

	AssumptionText(Figures figures, Wording wording) {
		this.figures = figures;
		boat = figures.electrics();
		this.wording = wording;
	}

	List<String> lines() {
		Map<Assumption.Kind, TreeSet<String>> power = new EnumMap<>(Assumption.Kind.class);
		boat.states().forEach(state -> state.lowest().assumptions()
				.forEach(each -> power.computeIfAbsent(each.kind(), none -> new TreeSet<>()).addAll(each.subjects())));
		Map<LineAssumption.Kind, TreeSet<String>> line = new EnumMap<>(LineAssumption.Kind.class);
		boat.lines().forEach(each -> each.assumptions()
				.forEach(one -> line.computeIfAbsent(one.kind(), none -> new TreeSet<>()).addAll(one.subjects())));
		Map<SerialAssumption.Kind, TreeSet<String>> serial = new EnumMap<>(SerialAssumption.Kind.class);
		figures.serialLines().forEach(each -> each.assumptions()
				.forEach(one -> serial.computeIfAbsent(one.kind(), none -> new TreeSet<>()).addAll(one.subjects())));
		List<String> lines = new ArrayList<>();
		power.forEach((kind, subjects) -> lines.add(word(kind) + ": " + some(subjects) + "."));
		line.forEach((kind, subjects) -> lines.add(word(kind) + ": " + some(subjects) + "."));
		serial.forEach((kind, subjects) -> lines.add(word(kind) + ": " + some(subjects) + "."));
		if (!boat.boat().networks().isEmpty()) {
			lines.add("All copper has one temperature, that of the hottest place for the lowest voltages; switches, tees and feed-throughs resist nothing.");
			lines.add("A meter is read, and levels hold, at " + Conditions.USUAL + ".");
		}
		return lines;
	}

	private String some(TreeSet<String> subjects) {
		return wording.some(List.copyOf(subjects), boat.boat().networks().size() == 1 ? boat.boat().networks().get(0).name() : "");
	}

	private static String word(Assumption.Kind kind) {
		return switch (kind) {
		case CONTACT_RESISTANCE -> "A contact has " + value(kind);
		case CONDUCTOR -> "Power conductors are of " + value(kind);
		case FUSE_RESISTANCE -> "A fuse or breaker resists nothing";
		case BANK_RESISTANCE -> "A bank has no internal resistance";
		case LEAD -> "A lead has no length";
		case EFFICIENCY -> "A converter loses nothing";
		case REFERENCE_VOLTAGE -> "A stated load holds at " + value(kind);
		case GUARANTEED_LOAD -> "A device draws at most what it usually draws";
		case LOAD -> "A device draws nothing from the network";
		case DIP -> "A source that is fed from another does not dip by itself";
		};
	}

	private static String value(Assumption.Kind kind) {
		return kind.assumed().orElseThrow().toString();
	}

	private static String word(SerialAssumption.Kind kind) {
		return switch (kind) {
		case LISTENER_DRAW -> "A listener draws " + Wording.milliamperes(TalkerDrive.LISTENER_DRAWS) + " at " + TalkerDrive.LISTENER_DRAWS_AT;
		case LISTENER_LEVEL -> "An isolated listener takes the signal across two wires";
		case PORT_RATE -> "A serial port signals as fast as the others on its line";
		};
	}

	private static String word(LineAssumption.Kind kind) {
		return switch (kind) {
		case INPUT_RESISTANCE -> "A node shows " + kind.assumed() + " across the signal pair";
		case SIGNAL_CONDUCTOR -> "Signal conductors are of " + kind.assumed();
		case DELAY -> "A signal takes " + kind.assumed();
		case CONTACT_RESISTANCE -> "A signal contact has " + kind.assumed();
		case TERMINATOR -> "A terminator has " + kind.assumed();
		};
	}
}
