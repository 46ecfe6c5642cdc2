/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.network.Backbone;
import hullwright.network.Element;
import hullwright.network.Network;
import hullwright.network.part.Connector;
import hullwright.network.part.ConnectorFamily;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A backbone has connectors that only one maker makes.
 */
public final class VendorFamilyInBackbone implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("connectors/vendor-family-in-backbone", "One maker's connectors in a backbone", Severity.WARNING,
				"{family}, one maker's own connectors, in the backbone from {first} to {last}",
				"common practice: the standard screw connectors in the backbone, one maker's own on drops only");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			for (Backbone backbone : network.backbones()) {
				List<Element> elements = backbone.elements();
				int[] ofVendor = IntStream.range(0, elements.size()).filter(at -> vendorFamily(elements.get(at)).isPresent()).toArray();
				if (ofVendor.length > 0) {
					Element first = elements.get(ofVendor[0]);
					Element last = elements.get(ofVendor[ofVendor.length - 1]);
					boolean between = !vendorFamily(elements.get(0)).isPresent() && !vendorFamily(elements.get(elements.size() - 1)).isPresent();
					Finding.Builder finding = between ? boat.finding(backbone.origin().shownAt(first.origin()))
							: boat.advice(backbone.origin().shownAt(first.origin()));
					findings.add(finding
							.value("family", vendorFamily(first).orElseThrow().name())
							.value("first", first.origin().simpleName())
							.value("last", last.origin().simpleName())
							.build());
				}
			}
		}
		return findings;
	}

	private static Optional<ConnectorFamily> vendorFamily(Element element) {
		return Stream.of(element.towardsStart(), element.towardsEnd()).flatMap(Optional::stream).map(Connector::family)
				.filter(family -> !family.standard()).findFirst();
	}
}
