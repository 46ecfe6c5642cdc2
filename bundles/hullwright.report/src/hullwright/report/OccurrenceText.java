/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import hullwright.rules.report.Occurrence;

/**
 * Says in words on which boats a finding occurs.
 */
public final class OccurrenceText {

	private OccurrenceText() {
	}

	/** The boats, or empty where every boat is meant and nothing needs saying. */
	public static String of(Occurrence occurrence) {
		if (occurrence.onAll()) {
			return "";
		}
		String hulls = occurrence.hulls().isEmpty() ? "" : (occurrence.hulls().size() == 1 ? "hull " : "hulls ") + String.join(", ", occurrence.hulls());
		if (occurrence.condition().isEmpty()) {
			// without a condition it is on every combination that can be ordered, or on sold hulls only
			return occurrence.boats() == occurrence.hulls().size() ? "only on " + hulls : "on every boat that can be ordered";
		}
		return "when " + occurrence.condition() + (hulls.isEmpty() ? "" : "; sold: " + hulls);
	}
}
