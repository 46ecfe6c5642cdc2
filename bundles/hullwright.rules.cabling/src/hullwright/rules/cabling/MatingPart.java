/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.cabling;

import hullwright.network.PartsOnOffer;
import hullwright.network.part.Cap;
import hullwright.network.part.Connector;
import hullwright.network.part.Part;
import hullwright.network.part.Terminator;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What the catalogs offer for a connector that lies open: the first part of a kind that plugs in.
 */
final class MatingPart {

	private MatingPart() {
	}

	/** A terminator; one in line is for the device behind it, not for closing an end. */
	static Optional<Terminator> terminator(PartsOnOffer offer, Connector open) {
		return first(offer, Terminator.class, terminator -> !terminator.inLine(), open);
	}

	/** A blank cap. */
	static Optional<Cap> cap(PartsOnOffer offer, Connector open) {
		return first(offer, Cap.class, cap -> true, open);
	}

	private static <P extends Part> Optional<P> first(PartsOnOffer offer, Class<P> kind, Predicate<P> suits, Connector open) {
		return offer.of(kind).stream().filter(suits).filter(part -> part.ends().first().filter(open::mates).isPresent()).findFirst();
	}
}
