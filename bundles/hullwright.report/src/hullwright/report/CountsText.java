/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/**
 * Says in words how many findings there are.
 */
public final class CountsText {

	private CountsText() {
	}

	/** How many of each severity, the severest first, such as {@code 2 errors, 1 warning}; empty if there are none. */
	public static String of(ToLongFunction<Severity> counts) {
		List<String> words = new ArrayList<>();
		for (Severity severity : new Severity[] { Severity.ERROR, Severity.WARNING, Severity.ADVICE }) {
			long count = counts.applyAsLong(severity);
			if (count > 0) {
				boolean countable = severity != Severity.ADVICE;
				words.add(count + " " + severity.word() + (countable && count > 1 ? "s" : ""));
			}
		}
		return String.join(", ", words);
	}
}
