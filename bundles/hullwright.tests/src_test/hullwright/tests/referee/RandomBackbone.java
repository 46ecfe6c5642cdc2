/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import hullwright.tests.referee.DescribedBoat.Fitted;
import hullwright.tests.referee.DescribedBoat.Item;
import hullwright.tests.referee.DescribedBoat.PortAt;
import hullwright.tests.referee.DescribedBoat.Run;
import hullwright.tests.referee.DescribedBoat.Shape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Makes up one backbone and where supplies enter it, so that each of its sections has one.
 */
final class RandomBackbone {

	private final Random random;
	private final RandomParts parts;
	private final RandomPower power;
	private final String network;
	private final Shape shape;
	private final boolean turned;
	/** Whether taps may feed one side. Then ends and connectors say which way round the walk lies. */
	private final boolean sided;
	private final List<Item> items = new ArrayList<>();
	private final List<DescribedBoat.Feed> feeds = new ArrayList<>();
	private final List<PortAt> openPorts = new ArrayList<>();
	private final Map<String, List<PartKind.DeviceKind.Port>> throughDevices = new LinkedHashMap<>();
	private final Map<String, PartKind.Family> behindEnds = new LinkedHashMap<>();
	private PartKind.Family family;
	private int named;

	RandomBackbone(Random random, RandomParts parts, RandomPower power, String network, Shape shape) {
		this.random = random;
		this.parts = parts;
		this.power = power;
		this.network = network;
		this.shape = shape;
		turned = random.nextBoolean();
		sided = random.nextBoolean();
		family = parts.family();
	}

	/** The items from end to end. */
	List<Item> walk() {
		end(true);
		int sections = shape == Shape.SECTIONS ? 2 + random.nextInt(2) : 1;
		boolean fedHere = false;
		for (int section = 1; section <= sections; section++) {
			boolean last = section == sections;
			// a tap between two sections may feed both, or the side it is told to
			int gap = last ? 0 : fedHere ? 1 : 1 + random.nextInt(sided ? 3 : 2);
			int entries = shape == Shape.DOUBLY_FED || shape == Shape.MESHED && random.nextBoolean() ? 2 : 1;
			section(fedHere || gap > 1 ? 0 : entries);
			fedHere = false;
			if (gap == 1) {
				add(Fitted.of(name("gap"), parts.isolator(family, true, random.nextInt(4) > 0)));
			} else if (gap == 2) {
				add(tap(PartKind.Tap.Feeds.BOTH, true, List.of(supply(), supply())));
				fedHere = true;
			} else if (gap == 3) {
				// towards the start are pins, unless the walk is turned
				add(tap(turned ? PartKind.Tap.Feeds.FEMALE_SIDE : PartKind.Tap.Feeds.MALE_SIDE, true, List.of(supply())));
			}
		}
		end(false);
		return items;
	}

	boolean turned() {
		return turned;
	}

	List<DescribedBoat.Feed> feeds() {
		return feeds;
	}

	/** Ports that nothing is plugged into yet. The caller may take some. */
	List<PortAt> openPorts() {
		return openPorts;
	}

	/** Devices that the backbone runs through. */
	List<String> throughDevices() {
		return List.copyOf(throughDevices.keySet());
	}

	List<PartKind.DeviceKind.Port> portsOf(String throughDevice) {
		return throughDevices.get(throughDevice);
	}

	/** Devices behind in-line terminators, with the family of their connector. */
	Map<String, PartKind.Family> devicesBehindEnds() {
		return behindEnds;
	}

	private String name(String what) {
		return what + ++named;
	}

	private void add(Item item) {
		items.add(item);
	}

	private String supply() {
		return power.supply(shape != Shape.TREE, false);
	}

	private Fitted tap(PartKind.Tap.Feeds sides, boolean breaksSupply, List<String> from) {
		return new Fitted(name("tap"), parts.tap(family, sides, breaksSupply), from, Optional.empty());
	}

	/** An end: a terminator, one in line with a device behind it where that fits, or nothing. */
	private void end(boolean start) {
		switch (random.nextInt(5)) {
		case 0 -> {
			if (sided) {
				terminate(start);
			}
		}
		case 1 -> {
			// its pins face the backbone; at the start of a walk that is not turned they would meet pins
			if (start == turned) {
				String device = network + (start ? "Bow" : "Stern");
				behindEnds.put(device, family);
				add(new Fitted(name("end"), parts.terminator(family, PartKind.Terminator.Place.IN_LINE), List.of(), Optional.of(device)));
			} else {
				terminate(start);
			}
		}
		default -> terminate(start);
		}
	}

	private void terminate(boolean start) {
		add(Fitted.of(name("end"), parts.terminator(family, start == turned ? PartKind.Terminator.Place.PINS : PartKind.Terminator.Place.SOCKETS)));
	}

	/** One section with so many places where a supply enters. */
	private void section(int entries) {
		int stations = 1 + entries + random.nextInt(shape == Shape.SECTIONS ? 4 : 8);
		List<Integer> entryAt = new ArrayList<>();
		while (entryAt.size() < entries) {
			int at = random.nextInt(stations);
			if (!entryAt.contains(at)) {
				entryAt.add(at);
			}
		}
		boolean twoAtOnce = entries == 2 && random.nextInt(5) == 0;
		int entered = 0;
		for (int station = 0; station < stations; station++) {
			way();
			if (entryAt.contains(station)) {
				entered++;
				if (!twoAtOnce) {
					enter(List.of(entered == 2 ? power.supply(true, true) : supply()));
				} else if (entered == 1) {
					enter(List.of(power.supply(true, false), power.supply(true, true)));
				}
			} else {
				tee();
			}
		}
		tee();
		way();
	}

	private void tee() {
		PartKind.Tee tee = parts.tee(family);
		String name = name("tee");
		add(Fitted.of(name, tee));
		for (int port = 1; port <= tee.ports(); port++) {
			openPorts.add(new PortAt(name, port, tee.portFamily()));
		}
	}

	/** What lies between two stations. */
	private void way() {
		switch (random.nextInt(12)) {
		case 0 -> add(tap(PartKind.Tap.Feeds.BOTH, false, List.of()));
		case 1 -> add(Fitted.of(name("wall"), parts.wall(family)));
		case 2 -> {
			add(Fitted.of(name("turn"), parts.adapter(family, turned, true)));
			family = parts.other(family);
		}
		case 3 -> {
			String device = network + "Through" + (throughDevices.size() + 1);
			PartKind.DeviceKind.Port pins = new PartKind.DeviceKind.Port("arriving", family);
			throughDevices.put(device, List.of(pins, new PartKind.DeviceKind.Port("leaving", family)));
			add(Fitted.of(device, new PartKind.DeviceKind(device + "Kind", Optional.empty(), Optional.empty(), throughDevices.get(device), false, Optional.empty(),
					Optional.empty())));
		}
		case 4 -> add(Fitted.of(name("gap"), parts.isolator(family, false, true)));
		default -> {
		}
		}
		if (random.nextInt(8) > 0) {
			add(new Run(name("run"), sided ? parts.moulded(family) : parts.cable(family), (5 + random.nextInt(96)) / 10.0));
		}
	}

	/** Lets supplies in: through a tap that does not break the supply, or through a port. */
	private void enter(List<String> supplies) {
		if (random.nextInt(3) > 0) {
			PartKind.Tap.Feeds sides = PartKind.Tap.Feeds.values()[sided ? random.nextInt(3) : 0];
			// with one supply a tap for both sides is the same whether or not it breaks the conductor that passes it
			boolean breaks = sides == PartKind.Tap.Feeds.BOTH && supplies.size() == 1 && random.nextBoolean();
			add(tap(sides, breaks, supplies));
			return;
		}
		PartKind.Tee tee = parts.tee(family);
		String name = name("tee");
		add(Fitted.of(name, tee));
		PartKind.Cord cord = parts.cord(tee.portFamily());
		List<Item> legs = new ArrayList<>(List.of(Fitted.of("", cord)));
		if (random.nextBoolean()) {
			legs.add(new Run("", parts.reel(), (5 + random.nextInt(30)) / 10.0));
		}
		feeds.add(new DescribedBoat.Feed(name("feed"), new PortAt(name, 1, tee.portFamily()), legs, supplies));
		for (int port = 2; port <= tee.ports(); port++) {
			openPorts.add(new PortAt(name, port, tee.portFamily()));
		}
	}
}
