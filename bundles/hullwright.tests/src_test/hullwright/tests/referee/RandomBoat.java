/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import hullwright.tests.referee.DescribedBoat.Corner;
import hullwright.tests.referee.DescribedBoat.Net;
import hullwright.tests.referee.DescribedBoat.PortAt;
import hullwright.tests.referee.DescribedBoat.Shape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Makes up a boat from a seed: the same seed gives the same boat on every machine.
 */
final class RandomBoat {

	private static final String BRIDGE = "link";

	private final Random random;
	private final Shape shape;
	private final RandomParts parts;
	private final RandomPower power;
	private final List<Net> networks = new ArrayList<>();
	/** Whether the bridge between two networks keeps their returns apart. */
	private boolean bridgeIsApart;
	/** The devices by name, their loads still to be settled. */
	private final Map<String, Socket> sockets = new LinkedHashMap<>();

	/**
	 * How a device is joined and fed, before its load is known.
	 *
	 * @param lead the length of the cable that is part of it, or empty if it has ports
	 * @param leadOf what that cable is, if the catalog says
	 */
	private record Socket(Optional<Double> lead, Optional<PartKind.Cable> leadOf, List<PartKind.DeviceKind.Port> ports, Optional<PartKind.DeviceKind.OwnSupply> own,
			List<DescribedBoat.OwnFeed> feeds, boolean draws) {
	}

	private RandomBoat(long seed, Shape shape, LoadData.Behaviour behaviour) {
		random = new Random(seed);
		this.shape = shape;
		parts = new RandomParts(random);
		power = new RandomPower(random, parts, RandomPower.suitsConverters(shape, behaviour));
	}

	/** The boat of a seed. Seeds that follow each other go in turn through all shapes and behaviours. */
	static DescribedBoat of(long seed) {
		Shape shape = Shape.values()[(int) Math.floorMod(seed, 4L)];
		LoadData.Behaviour behaviour = LoadData.Behaviour.values()[(int) Math.floorMod(seed / 4, 3L)];
		return new RandomBoat(seed, shape, behaviour).boat(seed, behaviour);
	}

	private DescribedBoat boat(long seed, LoadData.Behaviour behaviour) {
		networks.add(network("instruments", shape));
		if (shape == Shape.MESHED && random.nextBoolean()) {
			bridge(network("engines", Shape.TREE));
		} else if (random.nextInt(6) == 0) {
			networks.add(network("engines", Shape.TREE));
			if (random.nextBoolean()) {
				bridgeIsApart = true;
				bridge(networks.remove(1));
			}
		}
		if (random.nextInt(4) == 0) {
			sockets.put("bilgePump", new Socket(Optional.empty(), Optional.empty(), List.of(), Optional.of(new PartKind.DeviceKind.OwnSupply(true, draws())), ownFeeds(), false));
		}
		Optional<DescribedBoat.State> state = power.pickState();
		List<DescribedBoat.Device> devices = devices(behaviour);
		return new DescribedBoat(seed, shape, behaviour, List.copyOf(power.sources()), List.copyOf(power.states()), state,
				Corner.values()[random.nextInt(4)], networks, devices);
	}

	private List<DescribedBoat.Device> devices(LoadData.Behaviour behaviour) {
		double drawing = Math.max(1, sockets.values().stream().filter(Socket::draws).count());
		double share = behaviour == LoadData.Behaviour.CONSTANT_POWER ? 0.2 : 0.5;
		double ohms = networks.stream().mapToDouble(LoopResistance::most).max().orElseThrow();
		RandomLoads loads = new RandomLoads(random, behaviour, power.volts(), Math.min(0.5, share * power.volts() / ohms / drawing));
		List<DescribedBoat.Device> devices = new ArrayList<>();
		sockets.forEach((name, socket) -> devices.add(new DescribedBoat.Device(name,
				new PartKind.DeviceKind(name + "Kind", socket.lead(), socket.leadOf(), socket.ports(), name.equals(BRIDGE) && bridgeIsApart, socket.own(),
						socket.draws() ? Optional.of(loads.next()) : Optional.empty()),
				socket.feeds())));
		return devices;
	}

	private Net network(String name, Shape fedAs) {
		RandomBackbone backbone = new RandomBackbone(random, parts, power, name, fedAs);
		List<DescribedBoat.Item> items = backbone.walk();
		backbone.throughDevices().forEach(device -> sockets.put(device, new Socket(Optional.empty(), Optional.empty(), backbone.portsOf(device), Optional.empty(), List.of(), true)));
		backbone.devicesBehindEnds().forEach((device, family) -> sockets.put(device, socket(family)));
		List<PortAt> open = backbone.openPorts();
		List<DescribedBoat.Feed> feeds = backbone.feeds();
		List<DescribedBoat.Join> joins = new ArrayList<>();
		if (fedAs == Shape.MESHED) {
			for (int count = random.nextInt(3); count > 0 && open.size() > 3; count--) {
				PortAt from = open.remove(random.nextInt(open.size()));
				PortAt to = open.remove(random.nextInt(open.size()));
				joins.add(new DescribedBoat.Join(from, random.nextInt(4) == 0 ? List.of() : List.of(leg(from.family())), to));
			}
		}
		List<DescribedBoat.Drop> drops = new ArrayList<>();
		for (int at = 0; at < open.size(); at++) {
			if (drops.isEmpty() || random.nextInt(5) > 0) {
				drops(name, open.get(at), fedAs == Shape.MESHED && joins.isEmpty() && drops.isEmpty(), drops);
			}
		}
		return new Net(name, backbone.turned(), items, drops, feeds, joins);
	}

	/** One drop, or one that branches into several. */
	private void drops(String network, PortAt from, boolean secondNegative, List<DescribedBoat.Drop> drops) {
		List<DescribedBoat.Item> legs = new ArrayList<>();
		PartKind.Family family = from.family();
		boolean carriesPower = true;
		for (int count = random.nextInt(4); count > 0; count--) {
			switch (random.nextInt(6)) {
			case 0 -> legs.add(DescribedBoat.Fitted.of("", parts.wall(family)));
			case 1 -> {
				carriesPower = carriesPower && random.nextInt(6) > 0;
				legs.add(DescribedBoat.Fitted.of("", parts.adapter(family, false, carriesPower)));
				family = parts.other(family);
			}
			default -> legs.add(leg(family));
			}
		}
		if (carriesPower && !secondNegative && random.nextInt(8) == 0) {
			PartKind.Tee tee = parts.tee(family);
			String branch = network + "Branch" + (drops.size() + 1);
			legs.add(DescribedBoat.Fitted.of(branch, tee));
			drops.add(drop(network, from, legs, socket(family), drops));
			for (int port = 1; port <= tee.ports(); port++) {
				PortAt at = new PortAt(branch, port, tee.portFamily());
				drops.add(drop(network, at, random.nextBoolean() ? List.of() : List.of(leg(tee.portFamily())), socket(tee.portFamily()), drops));
			}
			return;
		}
		Socket socket = socket(random.nextInt(12) == 0 ? parts.other(family) : family);
		if (secondNegative || !carriesPower || shape == Shape.MESHED && random.nextInt(4) == 0 || random.nextInt(12) == 0) {
			boolean isolated = shape != Shape.MESHED;
			socket = new Socket(socket.lead(), socket.leadOf(), socket.ports(), Optional.of(new PartKind.DeviceKind.OwnSupply(isolated, draws())), ownFeeds(),
					carriesPower && random.nextInt(4) > 0);
		}
		drops.add(drop(network, from, legs, socket, drops));
	}

	private DescribedBoat.Drop drop(String network, PortAt from, List<DescribedBoat.Item> legs, Socket socket, List<DescribedBoat.Drop> drops) {
		String device = network + "Device" + (drops.size() + 1);
		sockets.put(device, socket);
		return new DescribedBoat.Drop(from, legs, device, Optional.empty());
	}

	private Socket socket(PartKind.Family family) {
		boolean lead = random.nextInt(3) == 0;
		return new Socket(lead ? Optional.of((5 + random.nextInt(56)) / 10.0) : Optional.empty(),
				lead && random.nextBoolean() ? Optional.of(parts.cable(family)) : Optional.empty(),
				List.of(new PartKind.DeviceKind.Port(lead ? "lead" : "bus", family)), Optional.empty(), List.of(), true);
	}

	private DescribedBoat.Item leg(PartKind.Family family) {
		return new DescribedBoat.Run("", parts.cable(family), (5 + random.nextInt(56)) / 10.0);
	}

	/** In A. */
	private double draws() {
		return (1 + random.nextInt(20)) / 10.0;
	}

	/** One feed, or two of which the second serves while the first is off. */
	private List<DescribedBoat.OwnFeed> ownFeeds() {
		return random.nextInt(3) > 0 ? List.of(ownFeed()) : List.of(ownFeed(), ownFeed());
	}

	private DescribedBoat.OwnFeed ownFeed() {
		boolean ownLead = random.nextBoolean();
		return new DescribedBoat.OwnFeed(power.supply(!ownLead, true), ownLead ? Optional.of(power.lead()) : Optional.empty());
	}

	/** A device that is dropped to from both networks. */
	private void bridge(Net second) {
		Net one = networks.remove(0);
		networks.add(withDrop(one, "a"));
		networks.add(withDrop(second, "b"));
		List<PartKind.DeviceKind.Port> ports = new ArrayList<>();
		networks.forEach(net -> net.drops().stream().filter(drop -> drop.device().equals(BRIDGE))
				.forEach(drop -> ports.add(new PartKind.DeviceKind.Port(drop.port().orElseThrow(), drop.from().family()))));
		sockets.put(BRIDGE, new Socket(Optional.empty(), Optional.empty(), ports, Optional.empty(), List.of(), true));
	}

	/** The network with one of its drops, which now leads to a port of the bridge. Networks have at least one drop. */
	private Net withDrop(Net net, String port) {
		List<DescribedBoat.Drop> drops = new ArrayList<>(net.drops());
		DescribedBoat.Drop last = drops.remove(drops.size() - 1);
		sockets.remove(last.device());
		drops.add(new DescribedBoat.Drop(last.from(), List.of(leg(last.from().family())), BRIDGE, Optional.of(port)));
		return new Net(net.name(), net.turned(), net.backbone(), drops, net.feeds(), net.joins());
	}
}
