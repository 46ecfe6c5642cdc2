/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Which boat of a series is meant: the options that are ordered, and the hull if it is one that has been sold.
 *
 * @param options the names of the options ordered, sorted
 * @param hull the name of the hull, if the boat is a sold one
 */
public record Selection(SortedSet<String> options, Optional<String> hull) {

	public Selection {
		options = Collections.unmodifiableSortedSet(new TreeSet<>(options));
	}

	@Override
	public String toString() {
		return hull.map(name -> "hull " + name).orElse(options.isEmpty() ? "no options" : "with " + String.join(", ", options));
	}
}
