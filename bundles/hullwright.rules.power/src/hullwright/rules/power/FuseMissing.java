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
import hullwright.network.power.SupplyLead;
import hullwright.quantity.Length;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A supply enters a network, and no fuse or breaker stands in its way, or the first one stands far from the source. A breaker further
 * up counts.
 */
public final class FuseMissing implements BoatRule {

	private static final Parameter WITHIN = new Parameter("wire", new Length(1.83), "how much wire there may be before the first fuse",
			"ABYC E-11 as quoted on public pages: 7 inches from the source; 40 inches if sheathed, 72 inches if also at a battery's terminal. The longest of these decides");

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/fuse-missing", "Fuse missing", Severity.ERROR,
				"no fuse or breaker protects {what}",
				"ABYC E-11 as quoted on public pages: overcurrent protection in every ungrounded conductor, near its source; display manuals (N2-E): a fused feed").with(WITHIN);
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Set<String> fused = new HashSet<>();
		boat.boat().power().supplies().stream().filter(supply -> SourceChain.of(boat.boat(), supply.name()).isFused()).map(Supply::name).forEach(fused::add);
		for (Network network : boat.boat().networks()) {
			network.backbones().stream().flatMap(backbone -> backbone.elements().stream())
					.filter(element -> element instanceof Fitting fitting && fitting.part() instanceof Tap tap && tap.fuseEachSide().isPresent())
					.map(Element::name).forEach(fused::add);
			network.feeds().stream().filter(feed -> feed.legs().stream()
					.anyMatch(leg -> leg instanceof Fitting fitting && fitting.part() instanceof Cord cord && cord.fuse().isPresent()))
					.map(Feed::name).forEach(fused::add);
		}
		Length within = boat.parameter("wire", Length.class);
		List<Finding> findings = new ArrayList<>();
		Set<String> leads = new HashSet<>();
		for (SupplyEntry entry : boat.figures().electrics().wiring().entries()) {
			Optional<Supply> supply = boat.boat().power().supplies().stream().filter(each -> each.name().equals(entry.supply())).findFirst();
			boolean atTheSource = fused.contains(entry.supply());
			Optional<SupplyLead> lead = supply.filter(each -> !atTheSource).flatMap(Supply::lead).filter(each -> each.length().exceeds(within));
			if (!atTheSource && !fused.contains(entry.part())) {
				findings.add(fixed(boat, supply, boat.finding(entry.origin()).key(ShortName.of(entry.supply()))
						.value("what", "what " + ShortName.of(entry.supply()) + " feeds").covers(EnteredNetworks.of(boat, entry.supply()))));
			} else if (lead.isPresent() && leads.add(entry.supply())) {
				findings.add(fixed(boat, supply, boat.finding(supply.get().origin()).key("lead").value("what", "the lead of "
						+ ShortName.of(entry.supply()) + ": the first one is behind " + lead.get().length() + " of wire")));
			}
		}
		return findings;
	}

	private static Finding fixed(BoatUnderCheck boat, Optional<Supply> supply, Finding.Builder finding) {
		supply.ifPresent(each -> FuseThatFits.of(boat, each).forEach(finding::fix));
		return finding.build();
	}
}
