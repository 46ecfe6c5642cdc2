/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.network.Backbone;
import hullwright.network.Boat;
import hullwright.network.CableRun;
import hullwright.network.CappedPort;
import hullwright.network.DevicePortRef;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Join;
import hullwright.network.Network;
import hullwright.network.PortRef;
import hullwright.network.part.Tee;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What there is to draw, and at which place: the parts of each backbone, the cards, and the lines between them.
 */
final class Sketch {

	/** The port of a part that has none to plug into: what is behind a terminator, or an end of the part. */
	private static final int NO_NUMBER = 0;

	final Boat boat;
	final PlaceGrid grid;
	final List<Trunk> trunks = new ArrayList<>();
	final List<Connection> connections = new ArrayList<>();
	final Map<String, Card> cards = new LinkedHashMap<>();
	private final Whereabouts whereabouts;
	private final Map<String, Stop> stops = new HashMap<>();

	private Sketch(Boat boat) {
		this.boat = boat;
		whereabouts = Whereabouts.of(boat);
		grid = PlaceGrid.of(boat.layout(), whereabouts.used());
	}

	static Sketch of(Boat boat) {
		Sketch sketch = new Sketch(boat);
		for (int number = 0; number < boat.networks().size(); number++) {
			sketch.add(boat.networks().get(number), number);
		}
		boat.devices().forEach(sketch::alone);
		boat.serialLines().forEach(line -> sketch.between(Connection.Kind.SERIAL, line.name(), line.from(), line.to()));
		boat.wirelessHops().forEach(hop -> sketch.between(Connection.Kind.RADIO, hop.name(), hop.from(), hop.to()));
		sketch.stops.values().forEach(Stop::orderPorts);
		sketch.connections.stream().filter(line -> !line.isShort()).forEach(sketch::leavesItsStack);
		return sketch;
	}

	/** Whether there is nothing to draw at all. */
	boolean isEmpty() {
		return grid.all().isEmpty();
	}

	private void add(Network network, int number) {
		network.backbones().forEach(backbone -> add(backbone, number));
		Set<PortRef> capped = new HashSet<>(network.caps().stream().map(CappedPort::port).toList());
		for (Backbone backbone : network.backbones()) {
			for (Element element : backbone.elements()) {
				if (element instanceof Fitting fitting && fitting.part() instanceof Tee tee) {
					tee.ports().keySet().forEach(port -> port(stops.get(fitting.name()), Optional.of(port)).capped =
							capped.contains(new PortRef(fitting.name(), Optional.of(port))));
				}
			}
		}
		network.drops().forEach(drop -> add(drop, number));
		network.feeds().forEach(this::add);
		network.joins().forEach(join -> add(join, number));
	}

	private void add(Backbone backbone, int number) {
		Trunk trunk = new Trunk(number, backbone);
		List<CableRun> cables = new ArrayList<>();
		for (Element element : backbone.elements()) {
			if (element instanceof Fitting fitting) {
				DrawnPlace place = grid.of(whereabouts.of(fitting.name()));
				Stay stay = trunk.stays.isEmpty() ? null : trunk.stays.get(trunk.stays.size() - 1);
				if (stay == null || stay.place != place) {
					stay = new Stay(number, backbone, place);
					trunk.stays.add(stay);
					place.stays.add(stay);
				}
				Stop stop = new Stop(fitting, List.copyOf(cables));
				stop.place = place;
				stay.stops.add(stop);
				stops.put(fitting.name(), stop);
				cables.clear();
				fitting.details().device().ifPresent(device -> hang(number, device.name(), List.of(), stop, Optional.empty(), device));
			} else {
				cables.add((CableRun) element);
			}
		}
		trunk.trailing.addAll(cables);
		if (!trunk.stays.isEmpty()) {
			trunks.add(trunk);
		}
	}

	private void hang(int network, String element, List<Element> legs, Stop stop, Optional<Integer> port, FittedDevice device) {
		Card card = cardOf(device);
		settle(card, stop);
		connect(Connection.drop(network, element, legs, stop, port(stop, port), card));
	}

	/** A drop, stretch by stretch where there is a tee in it. */
	private void add(Drop drop, int network) {
		Stop stop = stops.get(drop.from().part());
		Card last = cards.get(drop.from().part());
		List<Element> legs = new ArrayList<>();
		for (Element leg : drop.legs()) {
			if (leg instanceof Fitting fitting && fitting.part() instanceof Tee) {
				Card tee = cards.computeIfAbsent(fitting.name(), name -> Card.of(fitting, grid.of(whereabouts.of(name))));
				continueTo(tee, drop, network, stop, last, legs);
				stop = null;
				last = tee;
				legs.clear();
			} else {
				legs.add(leg);
			}
		}
		Card end = drop.device().map(this::cardOf)
				.orElseGet(() -> cards.computeIfAbsent(drop.name(), name -> Card.prepared(name, grid.of(whereabouts.of(name)))));
		continueTo(end, drop, network, stop, last, legs);
	}

	private void continueTo(Card card, Drop drop, int network, Stop stop, Card last, List<Element> legs) {
		settle(card, stop);
		if (stop != null) {
			connect(Connection.drop(network, drop.name(), List.copyOf(legs), stop, port(stop, drop.from().port()), card));
		} else if (last != null) {
			connections.add(Connection.between(Connection.Kind.DROP, network, drop.name(), List.copyOf(legs), last, card));
		}
	}

	private void add(Feed feed) {
		Stop stop = stops.get(feed.from().part());
		if (stop != null) {
			stop.feeds.add(feed);
			feed.from().port().ifPresent(number -> stop.ports.removeIf(port -> port.number == number && port.taken == null));
		}
	}

	private void add(Join join, int network) {
		Stop from = stops.get(join.from().part());
		Stop to = stops.get(join.to().part());
		if (from != null && to != null) {
			Connection line = Connection.join(network, join.name(), join.legs(), from, port(from, join.from().port()), to,
					port(to, join.to().port()));
			connect(line);
			line.toPort.taken = line;
		}
	}

	private void alone(FittedDevice device) {
		settle(cardOf(device), null);
	}

	private void between(Connection.Kind kind, String element, List<DevicePortRef> from, List<DevicePortRef> to) {
		for (DevicePortRef talker : from) {
			for (DevicePortRef listener : to) {
				Card start = cards.get(talker.device());
				Card end = cards.get(listener.device());
				if (start != null && end != null && start != end) {
					connections.add(Connection.between(kind, 0, element, List.of(), start, end));
				}
			}
		}
	}

	private Card cardOf(FittedDevice device) {
		return cards.computeIfAbsent(device.name(), name -> Card.of(device, grid.of(whereabouts.of(name))));
	}

	/** Puts a card where it stands for good, the first time it is met. */
	private static void settle(Card card, Stop stop) {
		if (card.stack == null) {
			(stop != null && stop.place == card.place ? stop.cards : card.place.visitors).add(card);
		}
	}

	private void connect(Connection line) {
		connections.add(line);
		if (line.port.taken == null) {
			line.port.taken = line;
		}
	}

	private static Stop.Port port(Stop stop, Optional<Integer> number) {
		int wanted = number.orElse(NO_NUMBER);
		return stop.ports.stream().filter(port -> port.number == wanted).findFirst().orElseGet(() -> {
			Stop.Port port = new Stop.Port(wanted);
			stop.ports.add(port);
			return port;
		});
	}

	private void leavesItsStack(Connection line) {
		for (Card card : new Card[] { line.from, line.to }) {
			if (card != null) {
				card.ends++;
				card.stack.risers++;
			}
		}
	}
}
