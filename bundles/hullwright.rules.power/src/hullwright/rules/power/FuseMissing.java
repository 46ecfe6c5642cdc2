/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.wiring.SupplyEntry;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.part.Cord;
import hullwright.network.part.Tap;
import hullwright.network.power.Supply;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A supply enters a network, and no fuse or breaker stands in its way.
 */
public final class FuseMissing implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/fuse-missing", "Fuse missing", Severity.ERROR,
				"no fuse or breaker protects what {supply} feeds",
				"ABYC E-11 as quoted on public pages: overcurrent protection in every ungrounded conductor, near its source; display manuals (N2-E): a fused feed");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Set<String> fused = new HashSet<>();
		boat.boat().power().supplies().stream().filter(supply -> supply.fuse().isPresent()).map(Supply::name).forEach(fused::add);
		for (Network network : boat.boat().networks()) {
			network.backbones().stream().flatMap(backbone -> backbone.elements().stream())
					.filter(element -> element instanceof Fitting fitting && fitting.part() instanceof Tap tap && tap.fuseEachSide().isPresent())
					.map(Element::name).forEach(fused::add);
			network.feeds().stream().filter(feed -> feed.legs().stream()
					.anyMatch(leg -> leg instanceof Fitting fitting && fitting.part() instanceof Cord cord && cord.fuse().isPresent()))
					.map(Feed::name).forEach(fused::add);
		}
		List<Finding> findings = new ArrayList<>();
		for (SupplyEntry entry : boat.figures().electrics().wiring().entries()) {
			if (!fused.contains(entry.supply()) && !fused.contains(entry.part())) {
				findings.add(boat.finding(entry.origin()).key(ShortName.of(entry.supply())).value("supply", ShortName.of(entry.supply()))
						.covers(EnteredNetworks.of(boat, entry.supply())).build());
			}
		}
		return findings;
	}
}
