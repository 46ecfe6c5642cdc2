/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.BackboneLength;
import hullwright.network.Backbone;
import hullwright.network.Network;
import hullwright.quantity.Length;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
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
					findings.add(finding(boat.finding(backbone.origin()), length, length.longerOf(), length.longerOfAllowance(), LONGER_OF));
				} else if (isOver(length.sum(), length.sumAllowance())) {
					findings.add(finding(boat.advice(backbone.origin()), length, length.sum(), length.sumAllowance(), SUM));
				}
			}
		}
		return findings;
	}

	private static boolean isOver(Length length, Optional<Length> allowance) {
		return allowance.isPresent() && length.exceeds(allowance.get());
	}

	private static Finding finding(Finding.Builder finding, BackboneLength length, Length counted, Optional<Length> allowance, String count) {
		String cables = length.grades().stream()
				.map(cable -> "cable " + cable.identity().name() + ": " + cable.identity().source())
				.collect(Collectors.joining("; "));
		return finding
				.value("length", counted)
				.value("limit", allowance.orElseThrow())
				.value("run", length.run())
				.source(count + "; " + cables)
				.build();
	}
}
