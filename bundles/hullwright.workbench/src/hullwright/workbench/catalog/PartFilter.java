/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.catalog;

import hullwright.check.OfferedPart;
import hullwright.check.ProjectTexts;
import hullwright.network.part.Connector;
import hullwright.network.part.Zone;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Which parts somebody looks for.
 *
 * @param words words that must all stand in what is said of the part
 * @param use what it is for, or empty for anything
 * @param connector a connector that it must plug into, as text such as {@code micro male}, or empty for any
 * @param atCursor connectors of which it must plug into one, all parts where there are none; empty to ask for none
 * @param zone where it must be allowed to stand, or empty for anywhere; a part of which nothing is said fits nowhere in particular
 * @param approved the catalogs from which purchasing may buy, or empty if it does not matter
 */
record PartFilter(String words, Optional<PartUse> use, Optional<String> connector, Optional<Set<Connector>> atCursor, Optional<Zone> zone,
		Optional<Set<String>> approved) {

	/** Everything. */
	static final PartFilter ALL = new PartFilter("", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

	boolean takes(OfferedPart offered) {
		var part = offered.part();
		Set<Connector> connectors = ProjectTexts.connectors(part);
		return use.map(wanted -> PartUse.of(part) == wanted).orElse(true)
				&& zone.map(wanted -> part.identity().suitability().zones().contains(wanted)).orElse(true)
				&& approved.map(catalogs -> catalogs.contains(offered.catalog())).orElse(true)
				&& connector.map(wanted -> connectors.stream().anyMatch(each -> opposite(each).equals(wanted))).orElse(true)
				&& atCursor.filter(wanted -> !wanted.isEmpty()).map(wanted -> connectors.stream().anyMatch(each -> wanted.stream().anyMatch(each::mates))).orElse(true)
				&& hasWords(offered);
	}

	/** How far a part is from what the words are about: 0 where its name or title has them all, 1 where only its data do. */
	int distance(OfferedPart offered) {
		String called = (offered.part().identity().name() + " " + offered.part().identity().title()).toLowerCase(Locale.ROOT);
		return has(called) ? 0 : 1;
	}

	/** What plugs into a connector, as text. */
	static String opposite(Connector connector) {
		return new Connector(connector.family(), connector.gender().opposite()).toString();
	}

	private boolean hasWords(OfferedPart offered) {
		var identity = offered.part().identity();
		String said = String.join(" ", identity.name(), identity.title(), identity.article(), identity.source(), offered.catalog(),
				PartUse.of(offered.part()).label(), PartFacts.load(offered.part()), PartFacts.range(offered.part()), PartFacts.connectors(offered.part()),
				PartFacts.data(offered.part()))
				.toLowerCase(Locale.ROOT);
		return has(said);
	}

	private boolean has(String said) {
		for (String word : words.toLowerCase(Locale.ROOT).strip().split("\\s+")) {
			if (!said.contains(word)) {
				return false;
			}
		}
		return true;
	}
}
