/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.WantedBoats;
import java.util.TreeSet;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** Which one boat is wanted. */
final class OneBoat {

	@Option(names = "--with", paramLabel = "OPTIONS", description = "The one boat with these options and no others; names with commas between them.")
	private String options;

	@Option(names = "--base", description = "The one boat without any option.")
	private boolean base;

	@Option(names = "--hull", paramLabel = "NAME", description = "This one hull.")
	private String hull;

	/** The boat as the engine is asked for it. */
	WantedBoats wanted() {
		if (hull != null) {
			return new WantedBoats.Sold(hull);
		}
		TreeSet<String> names = new TreeSet<>();
		if (!base) {
			Stream.of(options.split(",")).map(String::strip).filter(option -> !option.isEmpty()).forEach(names::add);
		}
		return new WantedBoats.WithOptions(names);
	}
}
