/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.List;

/**
 * Why a line has no figures, or some only in part.
 */
public sealed interface LineProblem {

	/** The signal pair is broken: devices on one network hear nothing of each other. The parts, the largest first. */
	record Parted(List<List<String>> parts) implements LineProblem {

		public Parted {
			parts = parts.stream().map(List::copyOf).toList();
		}
	}

	/** Something without resistance lies across the signal pair, so nothing can be heard; the qualified names of what does. */
	record Shorted(List<String> by) implements LineProblem {

		public Shorted {
			by = List.copyOf(by);
		}
	}

	/** Nothing ends the line: there is no terminating resistor on it. */
	record NoTerminator() implements LineProblem {
	}
}
