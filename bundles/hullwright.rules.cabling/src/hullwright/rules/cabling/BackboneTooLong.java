/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.BackboneLength;
import hullwright.network.Backbone;
import hullwright.network.CableRun;
import hullwright.network.Network;
import hullwright.network.PartsOnOffer;
import hullwright.network.part.Cable;
import hullwright.quantity.Length;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.EditIntent;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.ReplacePart;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A backbone is longer than its cable allows. The limit is that of the catalog's cable; the two published counts of the ends
 * differ, and the milder one decides between an error and advice.
 */
public final class BackboneTooLong implements BoatRule {

	private static final String LONGER_OF = "public cabling guide of a cable maker (N2-A), section 1.2: the longer of end cable and end drop counts";
	private static final String SUM = "public network pages of a display maker (N2-B), p. 12: the drops at both ends count on top";

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/backbone-too-long", "Backbone too long", Severity.ERROR,
				"the backbone is {length} long from end to end; its cable allows {limit}", LONGER_OF);
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Backbone backbone : network.backbones()) {
				BackboneLength length = boat.figures().lengthOf(network, backbone);
				if (isOver(length.longerOf(), length.longerOfAllowance())) {
					findings.add(finding(boat, boat.finding(backbone.origin()), backbone, length, length.longerOf(), length.longerOfAllowance(), LONGER_OF));
				} else if (isOver(length.sum(), length.sumAllowance())) {
					findings.add(finding(boat, boat.advice(backbone.origin()), backbone, length, length.sum(), length.sumAllowance(), SUM));
				}
			}
		}
		return findings;
	}

	private static boolean isOver(Length length, Optional<Length> allowance) {
		return allowance.isPresent() && length.exceeds(allowance.get());
	}

	private static Finding finding(BoatUnderCheck boat, Finding.Builder finding, Backbone backbone, BackboneLength length, Length counted,
			Optional<Length> allowance, String count) {
		String cables = length.grades().stream()
				.map(cable -> "cable " + cable.identity().name() + ": " + cable.identity().source())
				.collect(Collectors.joining("; "));
		finding.value("length", counted)
				.value("limit", allowance.orElseThrow())
				.value("run", length.run())
				.source(count + "; " + cables);
		weakest(length).ifPresent(old -> reachesFarther(boat.boat().partsOnOffer(), old).ifPresent(cable -> fixes(backbone, old, cable).forEach(finding::fix)));
		return finding.build();
	}

	private static Optional<Cable> weakest(BackboneLength length) {
		return length.grades().stream().filter(cable -> cable.longestBackbone().isPresent()).min(Comparator.comparing(cable -> cable.longestBackbone().get()));
	}

	private static Optional<Cable> reachesFarther(PartsOnOffer offer, Cable old) {
		return offer.of(Cable.class).stream().filter(cable -> cable.ends().equals(old.ends()))
				.filter(cable -> cable.longestBackbone().filter(length -> length.exceeds(old.longestBackbone().orElseThrow())).isPresent()).findFirst();
	}

	/** The better cable for the longest run, or for all runs of this grade. */
	private static List<Fix> fixes(Backbone backbone, Cable old, Cable cable) {
		List<CableRun> runs = backbone.elements().stream().filter(CableRun.class::isInstance).map(CableRun.class::cast)
				.filter(run -> run.cable().filter(old::equals).isPresent()).toList();
		List<Fix> fixes = new ArrayList<>();
		runs.stream().max(Comparator.comparing(CableRun::length)).ifPresent(longest -> fixes.add(new Fix("Take " + cable.identity().name() + " for the longest run of "
				+ old.identity().name(), Fix.Reach.DESIGN, replaced(List.of(longest), old, cable))));
		if (runs.size() > 1) {
			fixes.add(new Fix("Take " + cable.identity().name() + " for all runs of " + old.identity().name(), Fix.Reach.DESIGN, replaced(runs, old, cable)));
		}
		return fixes;
	}

	private static List<EditIntent> replaced(List<CableRun> runs, Cable old, Cable cable) {
		return runs.stream().<EditIntent>map(run -> new ReplacePart(run.origin(), old.identity(), cable.identity())).toList();
	}
}
