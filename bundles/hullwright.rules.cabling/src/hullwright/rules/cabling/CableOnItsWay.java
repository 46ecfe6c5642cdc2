/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.network.Boat;
import hullwright.network.CableRun;
import hullwright.network.Element;
import hullwright.network.Network;
import hullwright.network.layout.Way;
import hullwright.network.part.Cable;
import hullwright.quantity.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A cable that the text gives a way to reach along.
 *
 * @param cable the cable
 * @param way the way
 */
record CableOnItsWay(CableRun cable, Way way) {

	/** Those of a boat: in its backbones, then on its drops, feeds and joins. */
	static List<CableOnItsWay> of(Boat boat) {
		List<CableOnItsWay> found = new ArrayList<>();
		for (Network network : boat.networks()) {
			network.backbones().forEach(backbone -> of(backbone.elements()).forEach(found::add));
			network.drops().forEach(drop -> of(drop.legs()).forEach(found::add));
			network.feeds().forEach(feed -> of(feed.legs()).forEach(found::add));
			network.joins().forEach(join -> of(join.legs()).forEach(found::add));
		}
		return found;
	}

	/** Those of a run. */
	static Stream<CableOnItsWay> of(List<Element> run) {
		return run.stream().filter(CableRun.class::isInstance).map(CableRun.class::cast)
				.flatMap(cable -> cable.way().map(way -> new CableOnItsWay(cable, way)).stream());
	}

	/** What a message calls it. */
	String label() {
		return "the cable" + way.route().map(route -> " along " + route).orElse("");
	}

	/** Whether it is shorter than its way. */
	boolean isTooShort() {
		return way.length().exceeds(cable.length());
	}

	/** The shortest length that is sold and reaches: the way itself for cable by the metre, nothing if all moulded lengths are too short. */
	Optional<Length> shortestThatReaches() {
		return cable.cable().map(sold -> shortest(sold, way.length())).orElse(Optional.of(way.length()));
	}

	/** The shortest length that a cable is sold in and that reaches so far. */
	static Optional<Length> shortest(Cable sold, Length way) {
		return sold.stock().isEmpty() ? Optional.of(way) : sold.stock().stream().filter(each -> !way.exceeds(each)).min(Comparator.naturalOrder());
	}

	/** The longest moulded length, if it is sold by the piece and each is too short for the way. */
	Optional<Length> longestOfTooShortStock() {
		boolean byThePiece = cable.cable().filter(sold -> sold.ends().first().isPresent()).isPresent();
		return byThePiece && shortestThatReaches().isEmpty() ? cable.cable().flatMap(sold -> sold.stock().stream().max(Comparator.naturalOrder())) : Optional.empty();
	}
}
