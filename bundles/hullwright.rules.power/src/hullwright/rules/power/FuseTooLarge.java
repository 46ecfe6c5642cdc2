/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.FuseProtection;
import hullwright.network.Boat;
import hullwright.network.Origin;
import hullwright.network.PlacesInText;
import hullwright.network.part.FuseKind;
import hullwright.quantity.Current;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetProperty;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A fuse or breaker lets more current through than the weakest conductor behind it may carry.
 */
public final class FuseTooLarge implements BoatRule {

	/** E-11 lets the next standard size stand up to this share. */
	private static final double NEXT_STANDARD_SIZE = 1.5;

	@Override
	public RuleDescription description() {
		return RuleDescription.of("power/fuse-too-large", "Fuse larger than the cable allows", Severity.ERROR,
				"the fuse of {owner} is rated {rating}; {conductor} behind it may carry {limit}",
				"ABYC E-11 as quoted on public pages: not above what the conductor carries, the next standard size allowed up to 150 %; "
						+ "display manuals (N2-E, N2-K): 3 A for light cable");
	}

	@Override
	public List<Finding> check(BoatUnderCheck boat) {
		PlacesInText places = new PlacesInText(boat.boat());
		List<Finding> findings = new ArrayList<>();
		Set<String> told = new HashSet<>();
		for (FuseProtection each : FuseProtection.of(boat.boat(), boat.figures().electrics().wiring())) {
			// what a lead bears is estimated from its size, so only a clear excess is told
			double allowed = each.kind() == FuseProtection.Kind.LEAD ? NEXT_STANDARD_SIZE : 1;
			if (each.share() > allowed && told.add(each.owner())) {
				Origin owner = places.of(each.owner());
				Finding.Builder finding = each.kind() == FuseProtection.Kind.DROP ? boat.advice(owner)
						: each.share() > NEXT_STANDARD_SIZE ? boat.finding(owner) : boat.warning(owner);
				smaller(boat.boat(), each, owner).ifPresent(finding::fix);
				findings.add(finding
						.value("owner", owner.simpleName())
						.value("rating", each.fuse().rating())
						.value("conductor", (each.kind() == FuseProtection.Kind.LEAD ? "the lead of " : "") + ShortName.of(each.conductor()))
						.value("limit", each.rated())
						.covers(each.kind() == FuseProtection.Kind.DROP ? Set.of() : EnteredNetworks.of(boat, each.owner()))
						.build());
			}
		}
		return findings;
	}

	/** The largest fuse of the same kind that protects the conductor, where a supply has the fuse. */
	private static Optional<Fix> smaller(Boat boat, FuseProtection protection, Origin owner) {
		if (boat.power().supplies().stream().noneMatch(supply -> supply.name().equals(protection.owner()))) {
			return Optional.empty();
		}
		Optional<FuseKind> kind = protection.fuse().kind();
		List<Current> made = kind.map(FuseKind::ratings).filter(ratings -> !ratings.isEmpty()).orElse(List.of(protection.rated()));
		return made.stream().filter(rating -> !rating.exceeds(protection.rated())).max(Comparator.naturalOrder())
				.map(rating -> new Fix("Fit a fuse of " + rating, Fix.Reach.DESIGN,
						List.of(new SetProperty(owner, "fuse", rating + kind.map(each -> " of " + each.identity().name()).orElse("")))));
	}
}
