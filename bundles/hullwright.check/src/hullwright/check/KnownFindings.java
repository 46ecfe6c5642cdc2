/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.resolve.SeriesPlan;
import hullwright.rules.HouseDemands;
import hullwright.rules.RuleInForce;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was found on series that have not changed since, so that a change of one text has only the boats of that text checked anew.
 * Safe for use by several threads.
 */
final class KnownFindings {

	/** The chosen boat and all boats, each before and after a change that is tried. */
	private static final int MOST_FOR_EACH = 4;

	/**
	 * What the findings on a series depend on beside the series itself.
	 *
	 * @param boats which boats were wanted
	 * @param rules the objects that are the rules that ran, in their order
	 * @param inForce as the profile leaves them
	 * @param demands what the house demands
	 */
	record Circumstances(WantedBoats boats, List<SameObject> rules, Map<String, RuleInForce> inForce, HouseDemands demands) {

		/** The circumstances of a check. */
		static Circumstances of(WantedBoats boats, List<LoadedRule> rules, ProfileInForce profile) {
			return new Circumstances(boats, rules.stream().map(rule -> new SameObject(rule.rule())).toList(), profile.rules(), profile.demands());
		}
	}

	/** A rule of a house says itself what equals it, if it is asked; so it is not. */
	private record SameObject(Object rule) {

		@Override
		public boolean equals(Object other) {
			return other instanceof SameObject same && same.rule == rule;
		}

		@Override
		public int hashCode() {
			return System.identityHashCode(rule);
		}
	}

	private final Map<SeriesPlan, Map<Circumstances, SeriesFindings>> known = new IdentityHashMap<>();

	/** What was found in the same circumstances, if that is known. */
	synchronized Optional<SeriesFindings> of(SeriesPlan plan, Circumstances circumstances) {
		return Optional.ofNullable(known.getOrDefault(plan, Map.of()).get(circumstances));
	}

	/** Keeps what was found. */
	synchronized void put(SeriesPlan plan, Circumstances circumstances, SeriesFindings findings) {
		known.computeIfAbsent(plan, none -> new LinkedHashMap<>() {
			private static final long serialVersionUID = 1;

			@Override
			protected boolean removeEldestEntry(Map.Entry<Circumstances, SeriesFindings> eldest) {
				return size() > MOST_FOR_EACH;
			}
		}).put(circumstances, findings);
	}

	/** Forgets all series but these. */
	synchronized void keepOnly(Collection<SeriesPlan> plans) {
		Map<SeriesPlan, Boolean> kept = new IdentityHashMap<>();
		plans.forEach(plan -> kept.put(plan, true));
		known.keySet().removeIf(plan -> !kept.containsKey(plan));
	}
}
