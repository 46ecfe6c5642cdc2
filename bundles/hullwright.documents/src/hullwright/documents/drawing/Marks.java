/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.rules.Finding;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The findings by the element that they are about.
 */
final class Marks {

	private final Map<String, List<Finding>> byElement = new LinkedHashMap<>();
	private final Set<String> drawn = new HashSet<>();

	Marks(List<Finding> findings) {
		findings.forEach(finding -> byElement.computeIfAbsent(finding.element(), none -> new ArrayList<>()).add(finding));
	}

	/** The worst severity of the findings about an element. From now on they count as shown. */
	Optional<Severity> at(String element) {
		List<Finding> findings = byElement.getOrDefault(element, List.of());
		drawn.add(element);
		return findings.stream().map(Finding::severity).max(Severity::compareTo);
	}

	/** What the findings about an element say, a line each; empty if there are none. */
	String messages(String element) {
		StringBuilder text = new StringBuilder();
		for (Finding finding : byElement.getOrDefault(element, List.of())) {
			text.append('\n').append(finding.severity().word()).append(": ").append(finding.message());
		}
		return text.toString();
	}

	/** The findings about what is nowhere in the drawing. */
	List<Finding> elsewhere() {
		return byElement.entrySet().stream().filter(entry -> !drawn.contains(entry.getKey())).flatMap(entry -> entry.getValue().stream()).toList();
	}
}
