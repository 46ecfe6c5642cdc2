/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

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
import hullwright.rules.edit.SetLength;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A cable is sold by the piece, and the longest piece is shorter than the way.
 */
public final class NoStockLengthReaches implements BoatRule {

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/no-stock-length-reaches", "No stock length reaches", Severity.ERROR,
				"{cable} has to reach {way}, and the longest piece of {type} that is sold is {limit}",
				"the catalog: the stock lengths of the cable; the text: the way");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		List<Finding> findings = new ArrayList<>();
		for (CableOnItsWay each : CableOnItsWay.of(boat.boat())) {
			each.longestOfTooShortStock().ifPresent(longest -> findings.add(finding(boat, each, longest)));
		}
		return findings;
	}

	/** A piece that would have to be made to order is no more than a warning. */
	private static Finding finding(BoatUnderCheck boat, CableOnItsWay each, Length longest) {
		Cable sold = each.cable().cable().orElseThrow();
		Finding.Builder finding = (each.isTooShort() ? boat.finding(each.cable().origin()) : boat.warning(each.cable().origin()))
				.value("cable", each.label())
				.value("way", each.way().length())
				.value("type", sold.identity().name())
				.value("limit", longest);
		inLongerPieces(boat.boat().partsOnOffer(), sold, each.way().length()).ifPresent(other -> finding.fix(fix(each, sold, other)));
		return finding.build();
	}

	private static Fix fix(CableOnItsWay each, Cable sold, Cable other) {
		List<EditIntent> intents = new ArrayList<>();
		intents.add(new ReplacePart(each.cable().origin(), sold.identity(), other.identity()));
		if (each.isTooShort()) {
			CableOnItsWay.shortest(other, each.way().length())
					.ifPresent(length -> intents.add(new SetLength(each.cable().origin(), each.cable().length(), length)));
		}
		return new Fix("Replace " + sold.identity().name() + " by " + other.identity().name() + ", which is sold in longer pieces", Fix.Reach.DESIGN, intents);
	}

	/** Cable with the same connectors that is sold in pieces that reach. */
	private static Optional<Cable> inLongerPieces(PartsOnOffer offer, Cable sold, Length way) {
		return offer.of(Cable.class).stream().filter(other -> other.ends().equals(sold.ends()))
				.filter(other -> CableOnItsWay.shortest(other, way).isPresent() && !other.stock().isEmpty()).findFirst();
	}
}
