/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import hullwright.analysis.wiring.Joint.Kind;
import hullwright.analysis.wiring.Joint.Side;
import hullwright.network.Backbone;
import hullwright.network.CableRun;
import hullwright.network.CappedPort;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.Fitting;
import hullwright.network.FittedDevice;
import hullwright.network.Join;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.PortRef;
import hullwright.network.part.Connector;
import hullwright.network.part.Tee;
import hullwright.network.part.Terminator;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds all places of one network where two connectors meet. Branches that start at a port which nothing has are left out: there
 * is no joint.
 */
public final class Joints {

	private final Map<String, Fitting> fittings = new HashMap<>();
	private final Map<String, Boolean> atStart = new HashMap<>();
	private final List<Joint> found = new ArrayList<>();

	private Joints() {
	}

	/** The joints of a network: those of its backbones, then those of its drops, feeds, joins and caps, in the order of the text. */
	public static List<Joint> of(Network network) {
		Joints joints = new Joints();
		network.backbones().forEach(backbone -> joints.note(backbone.elements()));
		network.drops().forEach(drop -> joints.note(drop.legs()));
		network.backbones().stream().map(Backbone::elements).filter(elements -> !elements.isEmpty())
				.forEach(elements -> joints.atStart.put(elements.get(0).name(), true));
		network.backbones().forEach(joints::along);
		network.drops().forEach(joints::hang);
		network.feeds().forEach(joints::enter);
		network.joins().forEach(joints::join);
		network.caps().forEach(joints::close);
		return List.copyOf(joints.found);
	}

	private void note(List<Element> elements) {
		elements.stream().filter(Fitting.class::isInstance).map(Fitting.class::cast).forEach(fitting -> fittings.putIfAbsent(fitting.name(), fitting));
	}

	private void along(Backbone backbone) {
		between(Kind.BACKBONE, backbone.elements(), backbone.origin());
		for (int i = 0; i < backbone.elements().size(); i++) {
			if (backbone.elements().get(i) instanceof Fitting fitting && fitting.part() instanceof Terminator terminator) {
				int position = i;
				fitting.details().device().ifPresent(device -> found.add(new Joint(Kind.BEHIND_TERMINATOR,
						new Side(fitting.origin().simpleName(), fitting.origin(), Optional.of(terminator), terminator.ends().second()),
						side(device, Optional.empty()), backbone.origin(), position)));
			}
		}
	}

	private void hang(Drop drop) {
		Optional<Side> open = along(Kind.DROP, drop.from(), drop.legs(), drop.origin());
		if (open.isPresent() && drop.device().isPresent()) {
			found.add(new Joint(Kind.DROP, open.get(), side(drop.device().get(), drop.devicePort()), drop.origin(), drop.legs().size()));
		}
	}

	private void enter(Feed feed) {
		along(Kind.FEED, feed.from(), feed.legs(), feed.origin());
	}

	private void join(Join join) {
		Optional<Side> open = along(Kind.JOIN, join.from(), join.legs(), join.origin());
		Optional<Side> target = port(join.to());
		if (open.isPresent() && target.isPresent()) {
			found.add(new Joint(Kind.JOIN, open.get(), target.get(), join.origin(), join.legs().size()));
		}
	}

	private void close(CappedPort capped) {
		port(capped.port()).ifPresent(port -> found.add(new Joint(Kind.CAP, port,
				new Side(capped.cap().identity().name(), capped.origin(), Optional.of(capped.cap()), capped.cap().ends().first()),
				capped.origin(), 0)));
	}

	/** The joints along a branch, and the side that is open at its end; none if it starts at a port that nothing has. */
	private Optional<Side> along(Kind kind, PortRef from, List<Element> legs, Origin run) {
		Optional<Side> port = port(from);
		if (port.isEmpty() || legs.isEmpty()) {
			return port;
		}
		found.add(new Joint(kind, port.get(), towardsStart(legs.get(0)), run, 0));
		between(kind, legs, run);
		return Optional.of(towardsEnd(legs.get(legs.size() - 1)));
	}

	private void between(Kind kind, List<Element> elements, Origin run) {
		for (int i = 1; i < elements.size(); i++) {
			found.add(new Joint(kind, towardsEnd(elements.get(i - 1)), towardsStart(elements.get(i)), run, i));
		}
	}

	private Optional<Side> port(PortRef port) {
		Fitting fitting = fittings.get(port.part());
		if (fitting == null) {
			return Optional.empty();
		}
		String name = fitting.origin().simpleName();
		if (port.port().isEmpty()) {
			Optional<Connector> free = atStart.containsKey(port.part()) ? fitting.towardsStart() : fitting.towardsEnd();
			return Optional.of(new Side(name, fitting.origin(), Optional.of(fitting.part()), free));
		}
		return fitting.part() instanceof Tee tee && tee.ports().containsKey(port.port().get())
				? Optional.of(new Side(name + "." + port.port().get(), fitting.origin(), Optional.of(tee), port.port(), tee.ports().get(port.port().get())))
				: Optional.empty();
	}

	private static Side towardsStart(Element element) {
		return side(element, element.towardsStart());
	}

	private static Side towardsEnd(Element element) {
		return side(element, element.towardsEnd());
	}

	private static Side side(Element element, Optional<Connector> connector) {
		if (element instanceof CableRun run) {
			return new Side(run.length() + run.cable().map(cable -> " of " + cable.identity().name()).orElse(" of cable"), run.origin(),
					run.cable().map(part -> part), connector);
		}
		Fitting fitting = (Fitting) element;
		String name = fitting.origin().simpleName();
		// a piece of a branch that has no name of its own is called by what it is
		return new Side(name.startsWith("leg-") ? fitting.part().identity().name() : name, fitting.origin(), Optional.of(fitting.part()), connector);
	}

	private static Side side(FittedDevice device, Optional<String> port) {
		String name = device.name().substring(device.name().lastIndexOf('.') + 1);
		return new Side(port.map(named -> name + "." + named).orElse(name), device.origin(), Optional.of(device.model()),
				device.model().connector(port));
	}
}
