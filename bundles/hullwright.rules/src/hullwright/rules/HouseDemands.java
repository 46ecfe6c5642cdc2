/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a house asks of its texts in its profile, beside the severities and limits of rules.
 *
 * @param demands what must be said
 * @param approved the catalogs whose parts purchasing may buy, if the house names any
 */
public record HouseDemands(List<Demand> demands, Optional<ApprovedCatalogs> approved) {

	/** A house that asks nothing. */
	public static final HouseDemands NONE = new HouseDemands(List.of(), Optional.empty());

	public HouseDemands {
		demands = List.copyOf(demands);
	}

	/**
	 * The catalogs whose parts purchasing may buy.
	 *
	 * @param names the names of the catalogs
	 * @param source where the house says so
	 */
	public record ApprovedCatalogs(Set<String> names, String source) {

		public ApprovedCatalogs {
			names = Set.copyOf(names);
		}
	}

	/** The demand for something on things of a kind, if the house makes it. */
	public Optional<Demand> demand(Demand.What what, Demand.On on) {
		return demands.stream().filter(each -> each.what() == what && each.on() == on).findFirst();
	}
}
