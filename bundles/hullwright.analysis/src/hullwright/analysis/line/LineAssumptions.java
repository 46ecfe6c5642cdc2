/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import hullwright.analysis.wiring.AttachedDevice;
import hullwright.analysis.wiring.Medium;
import hullwright.analysis.wiring.Span;
import hullwright.analysis.wiring.TerminatingResistor;
import hullwright.analysis.wiring.Wiring;

/** What is assumed of a line where the text is silent, each kind once with all that it concerns. */
final class LineAssumptions {

	private final Map<LineAssumption.Kind, TreeSet<String>> subjects = new EnumMap<>(LineAssumption.Kind.class);

	private LineAssumptions() {
	}

	static List<LineAssumption> of(Wiring wiring, int network) {
		LineAssumptions assumptions = new LineAssumptions();
		for (Span span : wiring.spans()) {
			if (span.network() == network && span.passes().signal()) {
				assumptions.note(span);
			}
		}
		for (AttachedDevice each : wiring.devices()) {
			if (each.network() == network && each.device().model().inputResistance().isEmpty()) {
				assumptions.note(LineAssumption.Kind.INPUT_RESISTANCE, each.device().name());
			}
		}
		for (TerminatingResistor each : wiring.terminators()) {
			if (each.network() == network && each.resistance().isEmpty()) {
				assumptions.note(LineAssumption.Kind.TERMINATOR, each.part());
			}
		}
		return assumptions.subjects.entrySet().stream().map(each -> new LineAssumption(each.getKey(), List.copyOf(each.getValue()))).toList();
	}

	private void note(Span span) {
		if (span.medium() instanceof Medium.Contact contact) {
			contact.family().filter(family -> family.contact().isEmpty())
					.ifPresent(family -> note(LineAssumption.Kind.CONTACT_RESISTANCE, family.name()));
		} else if (span.medium() instanceof Medium.Conductors conductors && conductors.length().metres() > 0) {
			if (conductors.signal().isEmpty()) {
				note(LineAssumption.Kind.SIGNAL_CONDUCTOR, span.element());
			}
			if (conductors.delay().isEmpty()) {
				note(LineAssumption.Kind.DELAY, span.element());
			}
		}
	}

	private void note(LineAssumption.Kind kind, String subject) {
		subjects.computeIfAbsent(kind, none -> new TreeSet<>()).add(subject);
	}
}
