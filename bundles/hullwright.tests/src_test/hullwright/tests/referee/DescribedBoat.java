/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One boat as a spec describes it, in one operating point: what both a text for our program and a netlist for the independent
 * one are written from. It knows nothing of either.
 *
 * @param seed what it was made from
 * @param shape how its networks are fed
 * @param behaviour how its loads behave
 * @param sources what can feed, in an order in which each comes after what feeds it
 * @param states its power states
 * @param state the power state it is in, if it declares any
 * @param corner the voltages, loads and temperature
 * @param networks its networks
 * @param devices every device on board by name, those that hang on no network too
 */
record DescribedBoat(long seed, Shape shape, LoadData.Behaviour behaviour, List<Source> sources, List<State> states, Optional<State> state,
		Corner corner, List<Net> networks, List<Device> devices) {

	/** How the networks of a boat are fed. */
	enum Shape {
		/** One supply, no loop. */
		TREE,
		/** Two supplies on one unbroken supply conductor. */
		DOUBLY_FED,
		/** Sections with a supply each, the return in common. */
		SECTIONS,
		/** Loops: joins, second negatives, bridges. */
		MESHED
	}

	/** Which voltages, loads and conductor temperature (°C) count together. */
	enum Corner {
		LOWEST(LoadData.Level.GUARANTEED, 60), NOMINAL(LoadData.Level.NOMINAL, 20), HIGHEST(LoadData.Level.NOMINAL, 0), START_UP(LoadData.Level.START, 60);

		final LoadData.Level level;
		final double celsius;

		Corner(LoadData.Level level, double celsius) {
			this.level = level;
			this.celsius = celsius;
		}
	}

	/** Voltages in V; at least one is stated. */
	record Volts(Optional<Double> lowest, Optional<Double> nominal, Optional<Double> highest) {

		double at(Corner corner) {
			return switch (corner) {
			case LOWEST, START_UP -> lowest.or(() -> nominal).or(() -> highest).orElseThrow();
			case NOMINAL -> nominal.or(() -> lowest).or(() -> highest).orElseThrow();
			case HIGHEST -> highest.or(() -> nominal).or(() -> lowest).orElseThrow();
			};
		}
	}

	/** A wire there and back; the length is that of one of the two, in m. */
	record Lead(double length, PartKind.Wire wire) {
	}

	/** What can feed. */
	sealed interface Source {
		String name();
	}

	record Bank(String name, Volts volts, Optional<Double> resistance) implements Source {
	}

	record Converter(String name, Optional<String> from, Volts volts, boolean isolated, Optional<Double> efficiency) implements Source {
	}

	record Supply(String name, Optional<String> from, Optional<Volts> volts, List<String> switches, Optional<PartKind.Fuse> fuse, Optional<Lead> lead)
			implements Source {
	}

	/** A power state: which switches are on, and to how many V a bank falls. */
	record State(String name, Set<String> on, Optional<String> dippingBank, double dipsTo) {
	}

	/** A device with what feeds it apart from the network; it draws from the first that is on. */
	record Device(String name, PartKind.DeviceKind kind, List<OwnFeed> ownFeeds) {
	}

	record OwnFeed(String supply, Optional<Lead> lead) {
	}

	/** One network. {@code turned}: the walk meets the parts' second ends first. */
	record Net(String name, boolean turned, List<Item> backbone, List<Drop> drops, List<Feed> feeds, List<Join> joins) {
	}

	/** What lies in a backbone or a drop. */
	sealed interface Item {
		PartKind kind();
	}

	/** A length of cable; one that is a leg of a drop has no name. */
	record Run(String name, PartKind.Cable kind, double length) implements Item {
	}

	/** A part; {@code from} are the supplies of a tap, {@code device} is the one behind it. The part of a leg may have no name. */
	record Fitted(String name, PartKind kind, List<String> from, Optional<String> device) implements Item {

		static Fitted of(String name, PartKind kind) {
			return new Fitted(name, kind, List.of(), Optional.empty());
		}
	}

	/** One port of a tee of the network. */
	record PortAt(String tee, int number, PartKind.Family family) {

		@Override
		public String toString() {
			return tee + "." + number;
		}
	}

	/** {@code port}: the port of a device that is declared beside the networks. */
	record Drop(PortAt from, List<Item> legs, String device, Optional<String> port) {
	}

	record Feed(String name, PortAt from, List<Item> legs, List<String> supplies) {
	}

	record Join(PortAt from, List<Item> legs, PortAt to) {
	}

	Device device(String name) {
		return devices.stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
	}

	@Override
	public String toString() {
		return "boat of seed " + seed + " (" + shape + ", " + behaviour + ", " + corner + state.map(each -> ", " + each.name()).orElse("") + ")";
	}
}
