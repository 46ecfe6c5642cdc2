/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.network.Fitting;
import hullwright.network.Origin;
import hullwright.network.PartsOnOffer;
import hullwright.network.layout.Bulkhead;
import hullwright.network.layout.Route;
import hullwright.network.part.FeedThrough;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.ReplacePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Cables go through a watertight bulkhead without a fitting that keeps it watertight: one finding for all that lack one, and one
 * for each fitting that does not.
 */
public final class BulkheadWithoutPassage implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/bulkhead-without-passage", "Watertight bulkhead without feed-through", Severity.WARNING,
				"{bulkhead} is to stay watertight, and {cause}",
				"public cabling guide of a cable maker (N2-A): watertight bulkhead feed-through connectors; public installation notes (EMC-A): watertight feed-through on exposed bulkheads");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<WayThroughTheBoat> ways = WayThroughTheBoat.of(boat.boat());
		List<Finding> findings = new ArrayList<>();
		for (Bulkhead wall : boat.boat().layout().bulkheads()) {
			if (wall.watertight()) {
				without(boat, wall, ways).ifPresent(findings::add);
				ways.stream().flatMap(way -> way.passages(wall).stream()).filter(passage -> !isTight(passage))
						.forEach(passage -> findings.add(leaking(boat, wall, passage)));
			}
		}
		return findings;
	}

	private static Optional<Finding> without(BoatUnderCheck boat, Bulkhead wall, List<WayThroughTheBoat> ways) {
		List<Route> routes = boat.boat().layout().routes();
		List<WayThroughTheBoat> lacking = ways.stream().filter(way -> way.passages(wall).isEmpty() && way.through(wall, routes).isPresent()).toList();
		if (lacking.isEmpty()) {
			return Optional.empty();
		}
		Origin first = lacking.get(0).through(wall, routes).orElseThrow();
		return Optional.of(boat.finding(wall.origin().shownAt(first))
				.value("bulkhead", wall.name())
				.value("cause", lacking.stream().map(WayThroughTheBoat::label).collect(Collectors.joining(" and ")) + (lacking.size() == 1 ? " goes" : " go")
						+ " through it without feed-through, gland or transit")
				.build());
	}

	private static boolean isTight(Fitting passage) {
		return passage.part() instanceof FeedThrough through && through.watertight();
	}

	private static Finding leaking(BoatUnderCheck boat, Bulkhead wall, Fitting passage) {
		Finding.Builder finding = boat.finding(passage.origin())
				.value("bulkhead", wall.name())
				.value("cause", PartWords.of(passage) + ", a " + passage.part().identity().name() + ", is no watertight feed-through");
		tight(boat.boat().partsOnOffer(), passage).ifPresent(finding::fix);
		return finding.build();
	}

	private static Optional<Fix> tight(PartsOnOffer offer, Fitting passage) {
		return offer.of(FeedThrough.class).stream()
				.filter(other -> passage.part() instanceof FeedThrough && other.watertight() && other.ends().equals(passage.part().ends())).findFirst()
				.map(other -> new Fix("Replace " + passage.part().identity().name() + " by " + other.identity().name(), Fix.Reach.DESIGN,
						List.of(new ReplacePart(passage.origin(), passage.part().identity(), other.identity()))));
	}
}
