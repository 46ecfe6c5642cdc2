/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** Gathers what is assumed, so that one kind of gap is told once, with all that it concerns. */
final class Assumptions {

	private final Map<Assumption.Kind, TreeSet<String>> subjects = new EnumMap<>(Assumption.Kind.class);

	void note(Assumption.Kind kind, String subject) {
		subjects.computeIfAbsent(kind, none -> new TreeSet<>()).add(subject);
	}

	List<Assumption> all() {
		return subjects.entrySet().stream().map(each -> new Assumption(each.getKey(), List.copyOf(each.getValue()))).toList();
	}
}
