/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.series;

import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Demand;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.List;

/**
 * The house wants an article number for every part, and the catalog gives one none. Told once for a part.
 */
public final class ArticleMissing implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("series/article-missing", "Article number missing", Severity.WARNING,
				"catalog {catalog} gives {part} no article number, so {element} cannot be ordered", "the profile: what it requires");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return boat.house().demand(Demand.What.ARTICLE, Demand.On.PART)
				.map(demand -> FirstOfEach.part(boat.boat(), part -> part.identity().article().isEmpty())
						.map(fitted -> boat.finding(fitted.place()).source(demand.source()).key(FirstOfEach.name(fitted))
								.value("catalog", fitted.part().identity().catalog())
								.value("part", fitted.part().identity().name())
								.value("element", fitted.place().simpleName()).build())
						.toList())
				.orElse(List.of());
	}
}
