/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import java.util.List;
import java.util.Optional;

/**
 * Why a line has no figures, or some only in part.
 */
public sealed interface LineProblem {

	/** The qualified name of what it concerns first, for those who look for its place in the text; none if that is the whole line. */
	Optional<String> subject();

	/** The signal pair is broken: devices on one network hear nothing of each other. The parts, the largest first. */
	record Parted(List<List<String>> parts) implements LineProblem {

		public Parted {
			parts = parts.stream().map(List::copyOf).toList();
		}

		/** The first device of the smallest part. */
		@Override
		public Optional<String> subject() {
			return parts.get(parts.size() - 1).stream().findFirst();
		}
	}

	/** Something without resistance lies across the signal pair, so nothing can be heard; the qualified names of what does. */
	record Shorted(List<String> by) implements LineProblem {

		public Shorted {
			by = List.copyOf(by);
		}

		@Override
		public Optional<String> subject() {
			return by.stream().findFirst();
		}
	}

	/** Nothing ends the line: there is no terminating resistor on it. */
	record NoTerminator() implements LineProblem {

		@Override
		public Optional<String> subject() {
			return Optional.empty();
		}
	}
}
