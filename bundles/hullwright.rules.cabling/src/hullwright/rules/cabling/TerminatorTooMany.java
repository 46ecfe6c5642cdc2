/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.analysis.line.TerminatorPlace.Where;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Origin;
import hullwright.network.PartsOnOffer;
import hullwright.network.part.Cord;
import hullwright.network.part.Terminator;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.Remove;
import hullwright.rules.edit.ReplacePart;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A backbone that is terminated at both ends has a third resistor across the signal pair, built into a device or a cord.
 */
public final class TerminatorTooMany implements BoatRule {

	private static final int ALLOWED = 2;

	@Override
	public RuleDescription description() {
		return RuleDescription.of("cabling/terminator-too-many", "Terminator too many", Severity.ERROR,
				"{part} has a terminator built in, and both ends of the backbone are terminated: {fitted} fitted, {allowed} allowed",
				"public network pages of a display maker (N2-B) and display installation manuals (N2-E): exactly two terminators, one at each end; installers' symptom list: 40 ohm and less across the pair (common practice)");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		return FittedTerminator.of(boat).stream().filter(terminator -> terminator.openEnds() == 0 && terminator.place().where() == Where.BUILT_IN)
				.map(terminator -> finding(boat, terminator)).toList();
	}

	private static Finding finding(BoatUnderCheck boat, FittedTerminator terminator) {
		Finding.Builder finding = terminator.finding(boat).value("fitted", terminator.fitted()).value("allowed", ALLOWED);
		plainCord(boat.boat().partsOnOffer(), terminator).ifPresent(finding::fix);
		besideIt(terminator).ifPresent(end -> finding.fix(new Fix("Take terminator " + end.simpleName() + " off: the one that is built in takes its place",
				Fix.Reach.DESIGN, List.of(new Remove(end)))));
		return finding.build();
	}

	/** A cord with the same plug and the same fuse that bears as much, without a resistor. */
	private static Optional<Fix> plainCord(PartsOnOffer offer, FittedTerminator terminator) {
		Optional<Cord> cord = terminator.feed().flatMap(feed -> feed.legs().stream()
				.filter(leg -> leg.origin().equals(terminator.place().origin())).map(leg -> ((Fitting) leg).part())
				.filter(Cord.class::isInstance).map(Cord.class::cast).findFirst());
		return cord.flatMap(old -> offer.of(Cord.class).stream()
				.filter(other -> other.terminates().isEmpty() && other.ends().equals(old.ends()) && other.fuse().equals(old.fuse()))
				.filter(other -> !old.rated().flatMap(needed -> other.rated().map(needed::exceeds)).orElse(false)).findFirst()
				.map(other -> new Fix("Replace " + old.identity().name() + " by " + other.identity().name() + ", which has no terminator", Fix.Reach.DESIGN,
						List.of(new ReplacePart(terminator.place().origin(), old.identity(), other.identity())))));
	}

	/** The terminator beside the part that this one is plugged into, where that part is the last of the backbone. */
	private static Optional<Origin> besideIt(FittedTerminator terminator) {
		List<Element> elements = terminator.backbone().elements();
		Optional<String> from = terminator.feed().map(feed -> feed.from().part()).or(() -> terminator.drop().map(drop -> drop.from().part()));
		int last = elements.size() - 1;
		if (from.isEmpty() || last < 2) {
			return Optional.empty();
		}
		return Stream.of(0, last)
				.filter(at -> elements.get(at) instanceof Fitting fitting && fitting.part() instanceof Terminator end && !end.inLine())
				.filter(at -> elements.get(at == 0 ? 1 : last - 1).name().equals(from.get()))
				.map(at -> elements.get(at).origin()).findFirst();
	}
}
