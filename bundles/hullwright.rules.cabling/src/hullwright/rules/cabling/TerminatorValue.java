/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.TerminatorPlace;
import hullwright.network.Backbone;
import hullwright.network.Network;
import hullwright.network.PartsOnOffer;
import hullwright.network.part.Terminator;
import hullwright.quantity.Resistance;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.Parameter;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.ReplacePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A terminating resistor has another value than the cable asks for.
 */
public final class TerminatorValue implements BoatRule {

	private static final String SOURCE = "DeviceNet operation manual, p. 46, and cable maker's data page (DN-G): 121 ohm, 1 %; display manuals (N2-E): 120 ohm";
	private static final Parameter LEAST = new Parameter("minimum", new Resistance(114), "the least value of a terminator", SOURCE + "; 5 % either way is common practice");
	private static final Parameter MOST = new Parameter("maximum", new Resistance(127), "the highest value of a terminator", SOURCE + "; 5 % either way is common practice");

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/terminator-value", "Terminator of the wrong value", Severity.ERROR,
				"the terminator {part} has {resistance}; {least} to {most} are right for this cable", SOURCE).with(LEAST, MOST).silencedBy("cabling/pair-shorted");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		Resistance least = boat.parameter("minimum", Resistance.class);
		Resistance most = boat.parameter("maximum", Resistance.class);
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Backbone backbone : network.backbones()) {
				for (TerminatorPlace place : boat.figures().terminatorsOf(network, backbone)) {
					place.resistance().filter(value -> least.exceeds(value) || value.exceeds(most)).ifPresent(value -> {
						Finding.Builder finding = boat.finding(place.origin())
								.value("part", PartWords.of(place))
								.value("resistance", value)
								.value("least", least)
								.value("most", most);
						right(boat.boat().partsOnOffer(), place, least, most).ifPresent(finding::fix);
						findings.add(finding.build());
					});
				}
			}
		}
		return findings;
	}

	/** A terminator with the same connectors and a right value; what is built into a device cannot be changed. */
	private static Optional<Fix> right(PartsOnOffer offer, TerminatorPlace place, Resistance least, Resistance most) {
		List<Terminator> terminators = offer.of(Terminator.class);
		return terminators.stream().filter(each -> each.identity().equals(place.part())).findFirst().flatMap(old -> terminators.stream()
				.filter(other -> other.inLine() == old.inLine() && other.ends().equals(old.ends()))
				.filter(other -> other.resistance().filter(value -> !least.exceeds(value) && !value.exceeds(most)).isPresent()).findFirst()
				.map(other -> new Fix("Replace " + old.identity().name() + " by " + other.identity().name(), Fix.Reach.DESIGN,
						List.of(new ReplacePart(place.origin(), old.identity(), other.identity())))));
	}
}
