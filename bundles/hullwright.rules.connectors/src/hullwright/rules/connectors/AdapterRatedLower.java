/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.analysis.wiring.WeakAdapter;
import hullwright.network.Network;
import hullwright.network.PartsOnOffer;
import hullwright.network.part.Adapter;
import hullwright.network.part.Part;
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

/**
 * An adapter may carry less than what is on both sides of it.
 */
public final class AdapterRatedLower implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/adapter-rated-lower", "Adapter rated lower", Severity.WARNING,
				"adapter {adapter} may carry {rated}, and what is on both sides of it {around}",
				"common practice: a part in a run carries what the run carries, since one fuse protects all of it");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (WeakAdapter weak : WeakAdapter.of(network)) {
				// a drop carries what one device draws; a backbone what all of them do
				Finding.Builder finding = weak.drop().map(drop -> boat.advice(drop.shownAt(weak.adapter().origin())).key("adapter"))
						.orElseGet(() -> boat.finding(weak.adapter().origin()));
				finding.value("adapter", weak.adapter().part().identity().name())
						.value("rated", weak.rated())
						.value("around", weak.around());
				stronger(boat.boat().partsOnOffer(), weak).ifPresent(finding::fix);
				findings.add(finding.build());
			}
		}
		return findings;
	}

	/** An adapter with the same connectors that may carry as much as what is around it. */
	private static Optional<Fix> stronger(PartsOnOffer offer, WeakAdapter weak) {
		Part old = weak.adapter().part();
		return offer.of(Adapter.class).stream()
				.filter(other -> other.carriesPower() && other.ends().equals(old.ends()))
				.filter(other -> other.rated().filter(rated -> !weak.around().exceeds(rated)).isPresent()).findFirst()
				.map(other -> new Fix("Replace " + old.identity().name() + " by " + other.identity().name(), Fix.Reach.DESIGN,
						List.of(new ReplacePart(weak.adapter().origin(), old.identity(), other.identity()))));
	}
}
