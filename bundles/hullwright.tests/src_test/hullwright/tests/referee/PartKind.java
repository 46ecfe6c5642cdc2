/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import java.util.List;
import java.util.Optional;

/**
 * A kind of part as a catalog describes it. Lengths in m, resistances in ohms, currents in A.
 */
sealed interface PartKind {

	/** What the catalog calls it. */
	String name();

	/** The connectors' family towards the start of a walk that is not turned; none if the end is bare. */
	Optional<Family> first();

	/** The connectors' family at the other end. */
	Optional<Family> second();

	/**
	 * A connector family.
	 *
	 * @param contact the resistance of one contact, if the catalog states it
	 */
	record Family(String name, Optional<Double> contact) {
	}

	/**
	 * One conductor of a pair.
	 *
	 * @param gauge an American wire gauge, or 0 if the size is an area
	 * @param area in mm², or 0 if the size is a gauge
	 * @param declared ohms a metre, if the catalog declares them
	 */
	record Wire(int gauge, double area, Optional<Double> declared) {

		static Wire ofGauge(int gauge) {
			return new Wire(gauge, 0, Optional.empty());
		}

		static Wire ofArea(double area) {
			return new Wire(0, area, Optional.empty());
		}

		/**
		 * Ohms a metre at 20 °C: as declared, else of annealed copper. The gauges' diameters are those of ASTM B258, the
		 * resistivity that of IEC 60028, both from memory; {@code CopperConductorTest} holds them against printed tables.
		 */
		double ohmsPerMetre() {
			double diameter = 0.127 * Math.pow(92, (36 - gauge) / 39.0);
			double squareMillimetres = gauge > 0 ? Math.PI * diameter * diameter / 4 : area;
			return declared.orElse(0.017241 / squareMillimetres);
		}
	}

	/**
	 * A fuse that is fitted.
	 *
	 * @param rating in A
	 * @param kind what kind it is, if the text says
	 */
	record Fuse(double rating, Optional<FuseKind> kind) {
	}

	/**
	 * A kind of fuse.
	 *
	 * @param drop its voltage drop at its rating in V, if the catalog states it
	 */
	record FuseKind(String name, Optional<Double> drop) {
	}

	/** A cable, moulded with a family's connectors or cut from the reel. */
	record Cable(String name, Optional<Family> family, Optional<Wire> power) implements PartKind {
		@Override
		public Optional<Family> first() {
			return family;
		}

		@Override
		public Optional<Family> second() {
			return family;
		}
	}

	/** A terminator for an end with pins or sockets, or one in line with a device behind it. */
	record Terminator(String name, Family family, Place place) implements PartKind {

		/** Where it fits. */
		enum Place {
			PINS, SOCKETS, IN_LINE
		}

		@Override
		public Optional<Family> first() {
			return Optional.of(family);
		}

		@Override
		public Optional<Family> second() {
			return Optional.of(family);
		}
	}

	/** A tee or a block of ports. */
	record Tee(String name, Family family, Family portFamily, int ports) implements PartKind {
		@Override
		public Optional<Family> first() {
			return Optional.of(family);
		}

		@Override
		public Optional<Family> second() {
			return Optional.of(family);
		}
	}

	/** A power tap. */
	record Tap(String name, Family family, Feeds feeds, boolean breaksSupply, Optional<Fuse> fuseEachSide) implements PartKind {

		/** Which sides it feeds, told by the connector there. */
		enum Feeds {
			BOTH, MALE_SIDE, FEMALE_SIDE
		}

		@Override
		public Optional<Family> first() {
			return Optional.of(family);
		}

		@Override
		public Optional<Family> second() {
			return Optional.of(family);
		}
	}

	/** What separates the supplies of two sections. */
	record Isolator(String name, Family family, boolean breaksSupply, boolean joinsReturn) implements PartKind {
		@Override
		public Optional<Family> first() {
			return Optional.of(family);
		}

		@Override
		public Optional<Family> second() {
			return Optional.of(family);
		}
	}

	/** A way through a bulkhead. */
	record FeedThrough(String name, Family family) implements PartKind {
		@Override
		public Optional<Family> first() {
			return Optional.of(family);
		}

		@Override
		public Optional<Family> second() {
			return Optional.of(family);
		}
	}

	/** What joins two families: pins of one, sockets of the other. */
	record Adapter(String name, Family pins, Family sockets, Optional<Double> length, Optional<Wire> power, boolean carriesPower) implements PartKind {
		@Override
		public Optional<Family> first() {
			return Optional.of(pins);
		}

		@Override
		public Optional<Family> second() {
			return Optional.of(sockets);
		}
	}

	/** A cable with a plug at one end, bare at the other. */
	record Cord(String name, Family family, double length, Optional<Wire> power, Optional<Fuse> fuse) implements PartKind {
		@Override
		public Optional<Family> first() {
			return Optional.of(family);
		}

		@Override
		public Optional<Family> second() {
			return Optional.empty();
		}
	}

	/**
	 * A kind of device.
	 *
	 * @param lead the length of the cable that is part of it, if it has no ports
	 * @param leadOf what that cable is, if the catalog says
	 * @param ports its network ports by name, each with the family of its connector
	 * @param portsApart whether there is no current path between its two ports
	 * @param own its supply apart from the network, if it has one
	 * @param load what it draws from the network, if anything
	 */
	record DeviceKind(String name, Optional<Double> lead, Optional<Cable> leadOf, List<Port> ports, boolean portsApart, Optional<OwnSupply> own,
			Optional<LoadData> load) implements PartKind {

		/** A connector with a name; a lead's has the name {@code lead}. */
		record Port(String name, Family family) {
		}

		/** A supply apart from the network and what the device draws from it, in A. */
		record OwnSupply(boolean isolated, double draws) {
		}

		@Override
		public Optional<Family> first() {
			return ports.isEmpty() ? Optional.empty() : Optional.of(ports.get(0).family());
		}

		@Override
		public Optional<Family> second() {
			return ports.size() < 2 ? Optional.empty() : Optional.of(ports.get(1).family());
		}
	}
}
