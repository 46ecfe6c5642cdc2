/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.part.Adapter;
import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.network.part.ConnectorFamily;
import hullwright.quantity.Current;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * An adapter that may carry less than all that is around it, so that it is the weakest place of its run.
 *
 * @param adapter the adapter
 * @param rated what it may carry
 * @param around what the weaker one of its two sides may carry: the cable there, or the connector if no cable follows
 * @param drop the drop that it lies in; none in a backbone
 */
public record WeakAdapter(Fitting adapter, Current rated, Current around, Optional<Origin> drop) {

	/** The weak adapters of a network, in the order of the text. */
	public static List<WeakAdapter> of(Network network) {
		List<WeakAdapter> found = new ArrayList<>();
		network.backbones().forEach(backbone -> look(backbone.elements(), Optional.empty(), Optional.empty(), found));
		for (Drop drop : network.drops()) {
			Optional<Current> device = drop.device().flatMap(fitted -> fitted.model().lead().flatMap(lead -> lead.cable()).flatMap(Cable::rated)
					.or(() -> contact(fitted.model().connector(drop.devicePort()))));
			look(drop.legs(), device, Optional.of(drop.origin()), found);
		}
		return found;
	}

	private static void look(List<Element> run, Optional<Current> behind, Optional<Origin> drop, List<WeakAdapter> found) {
		for (int i = 0; i < run.size(); i++) {
			if (run.get(i) instanceof Fitting fitting && fitting.part() instanceof Adapter adapter && adapter.rated().isPresent()) {
				Optional<Current> before = side(reversed(run.subList(0, i)), fitting.towardsStart(), Optional.empty());
				Optional<Current> after = side(run.subList(i + 1, run.size()), fitting.towardsEnd(), behind);
				Current rated = adapter.rated().get();
				Stream.of(before, after).flatMap(Optional::stream).min(Current::compareTo).filter(least -> least.exceeds(rated))
						.ifPresent(least -> found.add(new WeakAdapter(fitting, rated, least, drop)));
			}
		}
	}

	/** What the cable next to an adapter may carry, and never more than the contact between the two. */
	private static Optional<Current> side(List<Element> away, Optional<Connector> own, Optional<Current> otherwise) {
		Optional<Current> cable = away.stream().filter(CableRun.class::isInstance).map(CableRun.class::cast).findFirst()
				.flatMap(CableRun::cable).flatMap(Cable::rated).or(() -> otherwise);
		return Stream.of(cable, contact(own)).flatMap(Optional::stream).min(Current::compareTo);
	}

	private static Optional<Current> contact(Optional<Connector> connector) {
		return connector.map(Connector::family).flatMap(ConnectorFamily::rated);
	}

	private static List<Element> reversed(List<Element> some) {
		List<Element> turned = new ArrayList<>(some);
		Collections.reverse(turned);
		return turned;
	}
}
