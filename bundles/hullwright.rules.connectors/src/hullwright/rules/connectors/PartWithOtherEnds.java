/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.connectors;

import hullwright.network.PartsOnOffer;
import hullwright.network.part.Cable;
import hullwright.network.part.Cap;
import hullwright.network.part.Connector;
import hullwright.network.part.Cord;
import hullwright.network.part.Ends;
import hullwright.network.part.FeedThrough;
import hullwright.network.part.Fuse;
import hullwright.network.part.Isolator;
import hullwright.network.part.Part;
import hullwright.network.part.Tap;
import hullwright.network.part.Tee;
import hullwright.network.part.Terminator;
import java.util.Comparator;
import java.util.Optional;

/**
 * The part of the catalog that does the same as another and has the connectors that its neighbours take.
 */
final class PartWithOtherEnds {

	private PartWithOtherEnds() {
	}

	/** Whether both are known and plug into each other. */
	static boolean mate(Optional<Connector> one, Optional<Connector> other) {
		return one.isPresent() && other.isPresent() && one.get().mates(other.get());
	}

	/**
	 * The first on offer that does the same as a part and goes between two neighbours, whichever way round.
	 *
	 * @param before the connector before it
	 * @param after the connector behind it; empty if nothing is plugged in there
	 */
	static Optional<? extends Part> between(PartsOnOffer offer, Part part, Optional<Connector> before, Optional<Connector> after) {
		return offer.of(part.getClass()).stream()
				.filter(other -> doesTheSame(part, other))
				.filter(other -> goes(other, before, after))
				.min(Comparator.comparing(other -> !isOfTheSameGrade(part, other)));
	}

	/** The tee on offer with the fewest ports that goes in the place of a tee and whose port takes a connector. */
	static Optional<Tee> withPort(PartsOnOffer offer, Tee tee, int port, Optional<Connector> plug) {
		return offer.of(Tee.class).stream()
				.filter(other -> other.ends().equals(tee.ends()) && other.ports().keySet().containsAll(tee.ports().keySet()))
				.filter(other -> mate(other.ports().get(port), plug))
				.min(Comparator.comparing(other -> other.ports().size()));
	}

	private static boolean goes(Part other, Optional<Connector> before, Optional<Connector> after) {
		Ends ends = other.ends();
		if (after.isEmpty()) {
			return mate(ends.first(), before);
		}
		boolean turns = !(other instanceof Terminator);
		return mate(ends.first(), before) && mate(ends.second(), after) || turns && mate(ends.second(), before) && mate(ends.first(), after);
	}

	private static boolean doesTheSame(Part part, Part other) {
		if (part instanceof Tee old && other instanceof Tee tee) {
			return tee.ports().equals(old.ports());
		} else if (part instanceof Tap old && other instanceof Tap tap) {
			return tap.onlySide().equals(old.onlySide()) && tap.breaksSupply() == old.breaksSupply()
					&& tap.fuseEachSide().isPresent() == old.fuseEachSide().isPresent();
		} else if (part instanceof Isolator old && other instanceof Isolator isolator) {
			return isolator.breaksSupply() == old.breaksSupply() && isolator.joinsReturn() == old.joinsReturn();
		} else if (part instanceof FeedThrough old && other instanceof FeedThrough wall) {
			return wall.watertight() == old.watertight();
		} else if (part instanceof Terminator old && other instanceof Terminator terminator) {
			return terminator.inLine() == old.inLine() && terminator.resistance().equals(old.resistance());
		} else if (part instanceof Cord old && other instanceof Cord cord) {
			return cord.terminates().equals(old.terminates()) && rating(cord).equals(rating(old));
		}
		return part instanceof Cable || part instanceof Cap;
	}

	private static Optional<?> rating(Cord cord) {
		return cord.fuse().map(Fuse::rating);
	}

	/** Among cables, the one that is as thick. */
	private static boolean isOfTheSameGrade(Part part, Part other) {
		return part instanceof Cable old && other instanceof Cable cable
				&& cable.power().map(Cable.Conductor::size).equals(old.power().map(Cable.Conductor::size));
	}
}
