/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.analysis.power.EntryReading;
import hullwright.network.part.FuseKind;
import hullwright.network.power.Supply;
import hullwright.quantity.Current;
import hullwright.quantity.Ratio;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.SetProperty;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds fuses of the catalog for a supply.
 */
final class FuseThatFits {

	/** Common practice: a fuse is loaded to 80 % at most. */
	private static final Ratio LOADED = new Ratio(0.8);


	private FuseThatFits() {
	}

	/** The smallest rating of a kind that carries the load with some reserve; whether the wires behind it allow that, a trial tells. */
	static List<Fix> of(BoatUnderCheck boat, Supply supply) {
		Current load = StateFlow.lowest(boat).stream().flatMap(each -> each.flow().entries().stream())
				.filter(entry -> entry.entry().supply().equals(supply.name())).map(EntryReading::current)
				.max(Comparator.naturalOrder()).orElse(new Current(0));
		Optional<FuseKind> present = supply.fuse().flatMap(fuse -> fuse.kind());
		List<FuseKind> kinds = present.map(List::of).orElseGet(() -> boat.boat().partsOnOffer().of(FuseKind.class));
		List<Fix> fixes = new ArrayList<>();
		for (FuseKind kind : kinds) {
			kind.ratings().stream().filter(rating -> !load.exceeds(rating.times(LOADED.si()))).min(Comparator.naturalOrder())
					.ifPresent(rating -> fixes.add(new Fix("Fit a fuse of " + rating + ", " + kind.identity().name(), Fix.Reach.DESIGN,
							List.of(new SetProperty(supply.origin(), "fuse", rating + " of " + kind.identity().name())))));
		}
		return List.copyOf(fixes);
	}
}
