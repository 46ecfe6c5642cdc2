/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import hullwright.network.CableRun;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.layout.Way;
import hullwright.network.part.Cable;
import hullwright.quantity.Length;
import hullwright.spec.CableLeg;
import hullwright.spec.Leg;
import hullwright.spec.PartLeg;
import hullwright.spec.Run;

/**
 * Copies lengths of cable and the parts between a port and what hangs on it.
 */
final class RunPlan {

	private RunPlan() {
	}

	/** A length of cable: as the text says, or the shortest that can be bought for its way. */
	static CableRun cable(Run run, String name, Optional<Cable> usualCable, Copying copying) {
		Optional<Cable> cable = copying.parts().cable(run.getType()).or(() -> usualCable);
		Optional<Way> way = run.getRoute() != null
				? Optional.ofNullable(run.getRoute().getLength()).map(length -> new Way(length, Optional.of(run.getRoute().getName())))
				: Optional.ofNullable(run.getWay()).map(length -> new Way(length, Optional.empty()));
		Length length = Optional.ofNullable(run.getLength()).orElseGet(() -> way.map(Way::length).map(needed -> bought(cable, needed)).orElse(Length.ZERO));
		return new CableRun(name, cable, length, way, false, copying.places().of(run, name));
	}

	/** The shortest stock length that reaches; the way itself where nothing is in stock or nothing reaches. */
	private static Length bought(Optional<Cable> cable, Length needed) {
		return cable.map(Cable::stock).orElse(List.of()).stream().filter(stock -> !needed.exceeds(stock)).min(Length::compareTo).orElse(needed);
	}

	/** The cables and parts of a way, not yet laid. */
	static List<Element> legs(List<Leg> legs, String owner, String network, Optional<Cable> usualCable, Copying copying) {
		List<Element> copied = new ArrayList<>();
		for (Leg leg : legs) {
			String name = owner + ".leg-" + (copied.size() + 1);
			if (leg instanceof CableLeg cable) {
				copied.add(cable(cable, name, usualCable, copying));
			} else if (leg instanceof PartLeg part) {
				String partName = part.getName() == null ? name : network + "." + part.getName();
				Fitting.Details details = Fitting.Details.at(Copying.name(part.getPlace()), Copying.name(part.getBulkhead()));
				copying.parts().of(part.getType()).ifPresent(type -> copied.add(new Fitting(partName, type, false, details, copying.places().of(leg, partName))));
			}
		}
		return List.copyOf(copied);
	}
}
