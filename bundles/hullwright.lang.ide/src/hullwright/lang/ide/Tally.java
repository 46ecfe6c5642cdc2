/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.rules.Severity;
import hullwright.rules.report.ReportedFinding;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * How many findings there are of each severity.
 */
public record Tally(int errors, int warnings, int advice) {

	static Tally of(Collection<ReportedFinding> findings) {
		int[] counts = new int[Severity.values().length];
		findings.forEach(each -> counts[each.finding().severity().ordinal()]++);
		return new Tally(counts[Severity.ERROR.ordinal()], counts[Severity.WARNING.ordinal()], counts[Severity.ADVICE.ordinal()]);
	}

	/** The severest severity that occurs. */
	public Optional<Severity> worst() {
		return errors > 0 ? Optional.of(Severity.ERROR) : warnings > 0 ? Optional.of(Severity.WARNING) : advice > 0 ? Optional.of(Severity.ADVICE) : Optional.empty();
	}

	/** In words, such as {@code 2 errors, 1 warning}; what there is none of is left out, and with nothing at all it is "no findings". */
	public String text() {
		List<String> parts = new ArrayList<>();
		if (errors > 0) {
			parts.add(errors == 1 ? "1 error" : errors + " errors");
		}
		if (warnings > 0) {
			parts.add(warnings == 1 ? "1 warning" : warnings + " warnings");
		}
		if (advice > 0) {
			parts.add(advice + " advice");
		}
		return parts.isEmpty() ? "no findings" : String.join(", ", parts);
	}
}
