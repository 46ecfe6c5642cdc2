/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.network.Boat;
import hullwright.network.FittedPart;
import hullwright.network.part.Part;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * What is wrong with a part of a catalog is told once, where it is fitted first.
 */
final class FirstOfEach {

	private FirstOfEach() {
	}

	/** The parts of a boat of which this holds, each once. */
	static Stream<FittedPart> part(Boat boat, Predicate<Part> wanted) {
		Map<String, FittedPart> first = new LinkedHashMap<>();
		boat.fittedParts().stream().filter(fitted -> wanted.test(fitted.part())).forEach(fitted -> first.putIfAbsent(name(fitted), fitted));
		return first.values().stream();
	}

	/** The name of the part with its catalog, which stays the same wherever it is fitted first. */
	static String name(FittedPart fitted) {
		return fitted.part().identity().catalog() + "." + fitted.part().identity().name();
	}
}
