/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.wiring.SupplyEntry;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.Reword;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The shield of a network is joined to earth at more than one place.
 */
public final class ShieldEarthedTwice implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/shield-earthed-twice", "Shield earthed twice", Severity.WARNING,
				"the shield is earthed at {place} and at {other}; one place only",
				"kit manual (N2-D), article of a gateway maker (N2-F), DeviceNet manuals (DN-C, DN-H): earth the shield at one point only");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			List<Origin> earths = ShieldEarths.of(network);
			for (int at = 1; at < earths.size(); at++) {
				Origin aside = aside(boat, earths.get(at), earths.get(0));
				findings.add(boat.finding(earths.get(at))
						.value("place", ShortName.of(earths.get(at).element()))
						.value("other", ShortName.of(earths.get(0).element()))
						.fix(notAt(aside))
						.fix(notAt(aside.equals(earths.get(0)) ? earths.get(at) : earths.get(0)))
						.build());
			}
		}
		return findings;
	}

	/** Of two earths the one where no supply enters, which is the one to give up first; else the first of them. */
	private static Origin aside(BoatUnderCheck boat, Origin one, Origin other) {
		Set<String> entries = boat.figures().electrics().wiring().entries().stream().map(SupplyEntry::part).collect(Collectors.toSet());
		return entries.contains(one.element()) && !entries.contains(other.element()) ? other : one;
	}

	private static Fix notAt(Origin earth) {
		return new Fix("Do not earth the shield at " + ShortName.of(earth.element()), Fix.Reach.DESIGN, List.of(new Reword(earth, "earths shield", "")));
	}
}
