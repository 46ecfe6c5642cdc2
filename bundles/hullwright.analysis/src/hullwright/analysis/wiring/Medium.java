/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import java.util.Optional;

import hullwright.network.part.Cable;
import hullwright.network.part.ConnectorFamily;
import hullwright.network.part.Fuse;
import hullwright.quantity.Current;
import hullwright.quantity.DelayPerLength;
import hullwright.quantity.Length;
import hullwright.quantity.Resistance;

/**
 * What lies between two points.
 */
public sealed interface Medium {

	/** The current that it may carry for ever, if a catalog says. */
	Optional<Current> rated();

	/**
	 * Two connectors plugged into each other: one contact in every conductor.
	 *
	 * @param family the connector family whose contacts resist more; none where wires are joined without connectors
	 */
	record Contact(Optional<ConnectorFamily> family) implements Medium {

		/** A contact of which no catalog says anything (DeviceNet media handbook DNET-UM072C-EN-P, p. 4-21). */
		public static final Resistance USUAL = new Resistance(0.005);

		@Override
		public Optional<Current> rated() {
			return family.flatMap(ConnectorFamily::rated);
		}
	}

	/**
	 * A length of conductors: a cable, a cord, an adapter, the lead of a device.
	 *
	 * @param length how long it is
	 * @param power its power conductors, if a catalog says
	 * @param signal its signal conductors, if a catalog says
	 * @param delay how long a signal takes over it, if a catalog says
	 * @param rated the current that its power conductors may carry, if a catalog says
	 */
	record Conductors(Length length, Optional<Cable.Conductor> power, Optional<Cable.Conductor> signal, Optional<DelayPerLength> delay,
			Optional<Current> rated) implements Medium {

		/** A length of a cable, or of one that no catalog describes. */
		static Conductors of(Length length, Optional<Cable> cable) {
			return new Conductors(length, cable.flatMap(Cable::power), cable.flatMap(Cable::signal), cable.flatMap(Cable::delay),
					cable.flatMap(Cable::rated));
		}
	}

	/**
	 * The inside of a part, which adds no resistance of its own.
	 *
	 * @param fuse the fuse in its supply conductor, if any
	 * @param side the side that the fuse protects, of a tap with one for each
	 */
	record Inside(Optional<Fuse> fuse, Optional<BackboneSide> side) implements Medium {

		/** Joined inside, without a fuse. */
		static final Inside JOINED = new Inside(Optional.empty(), Optional.empty());

		@Override
		public Optional<Current> rated() {
			return Optional.empty();
		}
	}
}
