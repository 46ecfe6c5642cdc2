/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.DropLength;
import hullwright.analysis.line.Stub;
import hullwright.network.Drop;
import hullwright.network.Network;
import hullwright.quantity.Length;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Band;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.EditIntent;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetLength;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A drop from the backbone to a device is longer than the bus bears; one that branches, to the device that is farthest.
 */
public final class DropTooLong implements BoatRule {

	private static final Band PRACTICE = new Band(Severity.ADVICE, new Length(5), "common practice: keep drops to 5 m");
	private static final Band LIMIT = new Band(Severity.ERROR, new Length(6),
			"public cabling guide of a cable maker (N2-A), section 1.4: 6 m from tee to device");

	@Override
	public RuleDescription description() {
		return RuleDescription.banded("cabling/drop-too-long", "Drop too long",
				"the drop to {device} is {length} long; the limit is {limit}", PRACTICE, LIMIT);
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (Network network : boat.boat().networks()) {
			Map<String, Drop> drops = network.drops().stream().collect(Collectors.toMap(Drop::name, Function.identity(), (one, other) -> one));
			for (Stub stub : boat.figures().stubsOf(network)) {
				Drop farthest = drops.get(stub.farthest());
				DropLength length = boat.figures().lengthOf(farthest);
				Optional<Band> band = boat.bandOf(stub.length()).filter(found -> !isExempt(found, length));
				band.ifPresent(found -> {
					Finding.Builder finding = boat.finding(farthest.origin(), found)
							.value("device", farthest.origin().simpleName())
							.value("length", stub.length())
							.value("cable", length.cable())
							.value("adapters", length.adapters())
							.value("lead", length.lead());
					shorter(farthest).ifPresent(finding::fix);
					findings.add(finding.build());
				});
			}
		}
		return findings;
	}

	/** Cables that are longer than their ways ask for, cut to what is sold and still reaches. */
	private static Optional<Fix> shorter(Drop drop) {
		List<EditIntent> intents = new ArrayList<>();
		StringJoiner lengths = new StringJoiner(" and ");
		CableOnItsWay.of(drop.legs()).forEach(each -> each.shortestThatReaches().filter(each.cable().length()::exceeds).ifPresent(length -> {
			intents.add(new SetLength(each.cable().origin(), each.cable().length(), length));
			lengths.add(length.toString());
		}));
		return intents.isEmpty() ? Optional.empty() : Optional.of(new Fix("Fit " + lengths + ", which still reaches", Fix.Reach.DESIGN, intents));
	}

	/** A lead that came with the device cannot be shortened, so only the limit itself is held against it. */
	private static boolean isExempt(Band band, DropLength length) {
		return band.severity() != Severity.ERROR && length.isIntegralLeadOnly();
	}
}
