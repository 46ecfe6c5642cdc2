/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import hullwright.tests.referee.DescribedBoat.Device;
import hullwright.tests.referee.DescribedBoat.Drop;
import hullwright.tests.referee.DescribedBoat.Fitted;
import hullwright.tests.referee.DescribedBoat.Item;
import hullwright.tests.referee.DescribedBoat.Net;
import hullwright.tests.referee.DescribedBoat.PortAt;
import hullwright.tests.referee.DescribedBoat.Run;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Writes a described boat as a netlist: wires, contacts, sources and loads as a designer would draw them from the description.
 */
final class BoatNetlist {

	/** What a contact has whose family does not say, in ohms: "nominal" for every connection to the trunk line (DeviceNet media design guide, p. 4-21). */
	private static final double USUAL_CONTACT = 0.005;

	/** Copper, per kelvin (IEC 60028, from memory). */
	private static final double TEMPERATURE_COEFFICIENT = 0.00393;

	private static final PartKind.Wire USUAL_WIRE = PartKind.Wire.ofGauge(22);

	private final DescribedBoat boat;
	private final Netlist netlist;
	private final double warmth;
	private final PowerNetlist power;
	private final Map<String, Conductors> tees = new HashMap<>();
	private final Map<String, String> commonOfDevice = new HashMap<>();
	private final Set<String> loaded = new HashSet<>();
	private double volts;

	/** Where a walk has come to: the conductors there, and the connector that waits for what follows. */
	private record Reached(Conductors at, Optional<PartKind.Family> connector) {
	}

	private BoatNetlist(DescribedBoat boat) {
		this.boat = boat;
		netlist = new Netlist(boat.toString());
		warmth = 1 + TEMPERATURE_COEFFICIENT * (boat.corner().celsius - 20);
		power = new PowerNetlist(boat, netlist, warmth);
	}

	static Netlist of(DescribedBoat boat) {
		BoatNetlist writer = new BoatNetlist(boat);
		boat.networks().forEach(writer::network);
		boat.devices().forEach(writer::ownPart);
		writer.power.settleZeros();
		return writer.netlist;
	}

	private void network(Net net) {
		volts = Stream.concat(net.backbone().stream().flatMap(item -> item instanceof Fitted fitted ? fitted.from().stream() : Stream.of()),
				net.feeds().stream().flatMap(feed -> feed.supplies().stream())).mapToDouble(power::volts).min().orElseThrow();
		walk(net, net.name(), null, net.backbone(), net.turned());
		for (Drop drop : net.drops()) {
			Reached end = walk(net, net.name() + "." + drop.device() + drop.port().map(port -> "-" + port).orElse(""), at(net, drop.from()), drop.legs(), false);
			device(net, drop, end);
		}
		net.feeds().forEach(feed -> {
			Reached end = walk(net, net.name() + "." + feed.name(), at(net, feed.from()), feed.legs(), false);
			feed.supplies().forEach(supply -> power.enter(supply, end.at(), net.name() + "." + feed.name()));
		});
		net.joins().forEach(join -> {
			String path = net.name() + ".join-" + join.from().tee() + "-" + join.from().number() + "-to-" + join.to().tee() + "-" + join.to().number();
			contact(walk(net, path, at(net, join.from()), join.legs(), false), at(net, join.to()), path);
		});
	}

	private Reached at(Net net, PortAt port) {
		return new Reached(tees.computeIfAbsent(net.name() + "." + port.tee(), Conductors::at), Optional.of(port.family()));
	}

	/** Walks along items and gives where it ended. */
	private Reached walk(Net net, String path, Reached from, List<Item> items, boolean turned) {
		Reached reached = from;
		int position = 0;
		for (Item item : items) {
			position++;
			String name = item instanceof Fitted fitted ? fitted.name() : ((Run) item).name();
			String place = name.isEmpty() ? path + ".leg-" + position : net.name() + "." + name;
			Conductors start = Conductors.at(place + "_start");
			Conductors end = Conductors.at(place + "_end");
			if (reached != null) {
				contact(reached, new Reached(start, turned ? item.kind().second() : item.kind().first()), place);
			}
			through(net, item, place, start, end, turned);
			reached = new Reached(end, turned ? item.kind().first() : item.kind().second());
		}
		return reached;
	}

	/** What conductors are at one connector and what they are at the next: one contact on each. */
	private void contact(Reached one, Reached other, String place) {
		double ohms = Math.max(contact(one.connector()), contact(other.connector()));
		netlist.resistor(place + "_contact_s", one.at().supply(), other.at().supply(), ohms);
		netlist.resistor(place + "_contact_c", one.at().common(), other.at().common(), ohms);
	}

	/** What a connector counts; bare conductors, fitted to the other side's connector, count nothing. */
	private static double contact(Optional<PartKind.Family> connector) {
		return connector.map(family -> family.contact().orElse(USUAL_CONTACT)).orElse(0.0);
	}

	/** One item from its start to its end. */
	private void through(Net net, Item item, String place, Conductors start, Conductors end, boolean turned) {
		PartKind kind = item.kind();
		if (kind instanceof PartKind.Cable cable) {
			double ohms = wire(cable.power(), ((Run) item).length());
			wires(place, start, end, ohms);
			netlist.readCurrent("supply current in " + place, start.supply(), end.supply(), ohms);
			netlist.readCurrent("return current in " + place, start.common(), end.common(), ohms);
		} else if (kind instanceof PartKind.Adapter adapter) {
			double ohms = wire(adapter.power(), adapter.length().orElse(0.0));
			if (adapter.carriesPower()) {
				netlist.resistor(place + "_s", start.supply(), end.supply(), ohms);
			}
			netlist.resistor(place + "_c", start.common(), end.common(), ohms);
		} else if (kind instanceof PartKind.Cord cord) {
			Conductors behindFuse = Conductors.at(place + "_fused");
			netlist.resistor(place + "_fuse", start.supply(), behindFuse.supply(), PowerNetlist.fuse(cord.fuse()));
			netlist.join(start.common(), behindFuse.common());
			wires(place, behindFuse, end, wire(cord.power(), cord.length()));
		} else if (kind instanceof PartKind.Isolator isolator) {
			if (!isolator.breaksSupply()) {
				netlist.join(start.supply(), end.supply());
			}
			if (isolator.joinsReturn()) {
				netlist.join(start.common(), end.common());
			}
		} else if (kind instanceof PartKind.Tap tap) {
			tap(net, tap, (Fitted) item, place, start, end, turned);
		} else {
			netlist.join(start.supply(), end.supply());
			netlist.join(start.common(), end.common());
			Fitted fitted = (Fitted) item;
			if (kind instanceof PartKind.Tee) {
				Conductors centre = tees.computeIfAbsent(place, Conductors::at);
				netlist.join(start.supply(), centre.supply());
				netlist.join(start.common(), centre.common());
			} else if (kind instanceof PartKind.DeviceKind) {
				load(boat.device(fitted.name()), net, start);
			}
			fitted.device().map(boat::device).ifPresent(device -> device(net, device, new Reached(start, kind.second()), Optional.empty()));
		}
	}

	private double wire(Optional<PartKind.Wire> wire, double length) {
		return length * wire.orElse(USUAL_WIRE).ohmsPerMetre() * warmth;
	}

	private void wires(String place, Conductors start, Conductors end, double ohms) {
		netlist.resistor(place + "_s", start.supply(), end.supply(), ohms);
		netlist.resistor(place + "_c", start.common(), end.common(), ohms);
	}

	private void tap(Net net, PartKind.Tap tap, Fitted fitted, String place, Conductors start, Conductors end, boolean turned) {
		netlist.join(start.common(), end.common());
		Conductors centre = new Conductors(place + "_centre_s", start.common());
		double fuse = PowerNetlist.fuse(tap.fuseEachSide());
		boolean feedsBoth = tap.feeds() == PartKind.Tap.Feeds.BOTH;
		// pins come first in a catalog, and look towards the start unless the tap is turned
		boolean feedsStart = feedsBoth || (tap.feeds() == PartKind.Tap.Feeds.MALE_SIDE) != turned;
		if (feedsBoth && tap.breaksSupply() && fitted.from().size() == 2) {
			Conductors second = new Conductors(place + "_second_s", start.common());
			netlist.resistor(place + "_fuse_start", centre.supply(), start.supply(), fuse);
			netlist.resistor(place + "_fuse_end", second.supply(), end.supply(), fuse);
			power.enter(fitted.from().get(0), centre, net.name() + "." + fitted.name());
			power.enter(fitted.from().get(1), second, net.name() + "." + fitted.name());
			return;
		}
		if (feedsStart || !tap.breaksSupply()) {
			netlist.resistor(place + "_fuse_start", centre.supply(), start.supply(), feedsStart ? fuse : 0);
		}
		if (feedsBoth || !feedsStart || !tap.breaksSupply()) {
			netlist.resistor(place + "_fuse_end", centre.supply(), end.supply(), feedsBoth || !feedsStart ? fuse : 0);
		}
		fitted.from().forEach(supply -> power.enter(supply, centre, net.name() + "." + fitted.name()));
	}

	private void device(Net net, Drop drop, Reached end) {
		device(net, boat.device(drop.device()), end, drop.port());
	}

	/** A device at the end of a drop or behind a terminator. */
	private void device(Net net, Device device, Reached end, Optional<String> port) {
		PartKind.Family connector = device.kind().ports().stream().filter(each -> port.isEmpty() || each.name().equals(port.get())).findFirst().orElseThrow().family();
		String place = net.name() + "_at_" + device.name();
		Conductors plug = Conductors.at(place + "_plug");
		Conductors inside = Conductors.at(place);
		contact(end, new Reached(plug, Optional.of(connector)), place);
		wires(place + "_lead", plug, inside, device.kind().lead().map(length -> wire(device.kind().leadOf().flatMap(PartKind.Cable::power), length)).orElse(0.0));
		load(device, net, inside);
	}

	/** What a device draws from the network, where it is joined to it first. */
	private void load(Device device, Net net, Conductors at) {
		String common = commonOfDevice.putIfAbsent(device.name(), at.common());
		if (common != null && !device.kind().portsApart()) {
			netlist.join(common, at.common());
		}
		if (!loaded.add(device.name())) {
			return;
		}
		netlist.readVoltage("voltage across " + device.name(), at.supply(), at.common());
		netlist.readVoltage("supply at " + device.name(), at.supply(), Netlist.ZERO);
		netlist.readVoltage("return at " + device.name(), at.common(), Netlist.ZERO);
		device.kind().load().ifPresent(load -> {
			double value = load.value(boat.corner().level);
			String label = device.name() + "_load";
			switch (load.behaviour()) {
			case CONSTANT_CURRENT -> netlist.add(Netlist.Kind.LOAD_CURRENT, label, at.supply(), at.common(), value);
			case RESISTIVE -> netlist.add(Netlist.Kind.LOAD_RESISTOR, label, at.supply(), at.common(), value);
			case CONSTANT_POWER -> netlist.constantPower(label, at.supply(), at.common(), value, volts);
			}
		});
	}

	/** What a device draws from its own supply, and the path that a supply opens which is not isolated. */
	private void ownPart(Device device) {
		if (device.ownFeeds().isEmpty()) {
			return;
		}
		PartKind.DeviceKind.OwnSupply own = device.kind().own().orElseThrow();
		Conductors end = new Conductors(device.name() + "_own_s", device.name() + "_own_c");
		Optional<DescribedBoat.OwnFeed> from = device.ownFeeds().stream().filter(feed -> power.isOn(feed.supply())).findFirst();
		device.ownFeeds().forEach(feed -> power.lead(feed.supply(), feed.lead(), end, device.name(), from.equals(Optional.of(feed))));
		if (!own.isolated()) {
			netlist.join(commonOfDevice.get(device.name()), end.common());
		}
		if (from.isPresent()) {
			netlist.add(Netlist.Kind.LOAD_CURRENT, device.name() + "_own", end.supply(), end.common(), own.draws());
		}
	}
}
