/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.SpanReading;
import hullwright.network.PlacesInText;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A cable, the lead of a device or a contact of a network carries more than it may. Told once for a network, where it is worst. What
 * the leads of supplies bear is held against their fuses.
 */
public final class ConductorOverloaded implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/conductor-overloaded", "Current over the rating", Severity.ERROR,
				"{part} carries {current}; {limit} are allowed{others}",
				"rating of the catalog's cable or connector; usual figures: 3 A light cable, 4 A micro, 8 A mini connectors (N2-G, DN-B p. 12, IEC 61076-2-101)")
				.silencedBy("power/cannot-be-fed");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Map<Integer, SpanReading> worst = new LinkedHashMap<>();
		Map<Integer, Set<String>> parts = new LinkedHashMap<>();
		for (StateFlow each : Stream.concat(StateFlow.lowest(boat).stream(), StateFlow.dipping(boat).stream()).toList()) {
			for (SpanReading span : each.flow().spans()) {
				if (span.used().filter(used -> used > 1).isPresent()) {
					worst.merge(span.span().network(), span, (known, next) -> next.used().orElseThrow() > known.used().orElseThrow() ? next : known);
					parts.computeIfAbsent(span.span().network(), network -> new LinkedHashSet<>()).add(span.span().element());
				}
			}
		}
		PlacesInText places = new PlacesInText(boat.boat());
		List<Finding> findings = new ArrayList<>();
		worst.forEach((network, span) -> {
			int others = parts.get(network).size() - 1;
			findings.add(boat.finding(places.of(span.span().element()))
					.value("part", words(span))
					.value("current", span.larger())
					.value("limit", span.rated().orElseThrow())
					.value("others", others == 0 ? "" : "; " + others + " more parts of this network carry too much")
					.covers(parts.get(network))
					.build());
		});
		return findings;
	}

	private static String words(SpanReading span) {
		String part = ShortName.of(span.span().element());
		return span.span().other().map(other -> "the contact between " + part + " and " + ShortName.of(other)).orElse(part);
	}
}
