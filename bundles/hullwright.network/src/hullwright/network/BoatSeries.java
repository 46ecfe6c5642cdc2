/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A series of boats: what can be ordered, and what is sold.
 *
 * @param name its name
 * @param title what people call it, empty if nothing
 * @param revision the revision of its text, empty if none
 * @param options its options, in the order of the text
 * @param choices the names of options of which a boat has exactly one of each group
 * @param hulls the hulls that are sold, in the order of the text
 * @param conditions the names of the options that a condition of the text depends on
 * @param waivers the findings that the yard lives with
 * @param partsOnOffer the parts that its catalogs offer
 * @param origin its place in the text
 */
public record BoatSeries(String name, String title, String revision, List<Option> options, List<Set<String>> choices, List<SoldHull> hulls, Set<String> conditions,
		List<Waiver> waivers, PartsOnOffer partsOnOffer, Origin origin) {

	public BoatSeries {
		options = List.copyOf(options);
		choices = List.copyOf(choices);
		hulls = List.copyOf(hulls);
		conditions = Set.copyOf(conditions);
		waivers = List.copyOf(waivers);
	}

	/**
	 * Something that a buyer may order.
	 *
	 * @param name its name
	 * @param title what people call it, empty if nothing
	 * @param requires the names of the options without which it cannot be ordered
	 * @param excludes the names of the options with which it cannot be ordered
	 * @param origin its place in the text
	 */
	public record Option(String name, String title, Set<String> requires, Set<String> excludes, Origin origin) {

		public Option {
			requires = Set.copyOf(requires);
			excludes = Set.copyOf(excludes);
		}
	}

	/**
	 * A hull that is sold.
	 *
	 * @param name its number or name
	 * @param options the names of its options
	 * @param contradiction why its options cannot be ordered together, in words, or empty if they can
	 * @param origin its place in the text
	 */
	public record SoldHull(String name, Set<String> options, Optional<String> contradiction, Origin origin) {

		public SoldHull {
			options = Set.copyOf(options);
		}
	}
}
