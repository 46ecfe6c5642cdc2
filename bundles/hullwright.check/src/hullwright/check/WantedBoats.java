/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Which boats of the series are to be checked.
 */
public sealed interface WantedBoats {

	/** Every boat that can be ordered and every hull that is sold. */
	record All() implements WantedBoats {
	}

	/**
	 * The one boat that has these options and no others.
	 *
	 * @param options the options
	 */
	record WithOptions(SortedSet<String> options) implements WantedBoats {
		public WithOptions {
			options = Collections.unmodifiableSortedSet(new TreeSet<>(options));
		}
	}

	/**
	 * One hull that is sold.
	 *
	 * @param name its name or number
	 */
	record Sold(String name) implements WantedBoats {
	}

	/** Of each series the one boat with the fewest options that can be ordered. */
	record Plainest() implements WantedBoats {
	}
}
