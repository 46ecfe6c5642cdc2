/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.Backbone;
import hullwright.network.Boat;
import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Join;
import hullwright.network.Network;
import hullwright.network.Origin;
import hullwright.network.PortRef;
import hullwright.network.part.Connector;
import hullwright.network.part.ConnectorFamily;
import hullwright.network.part.Cord;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Part;
import hullwright.network.part.Tap;
import hullwright.network.part.Tee;
import hullwright.network.part.Terminator;
import hullwright.quantity.Resistance;

/**
 * Walks along the backbones and drops of a boat and notes every point. Parts come first and what is between them after, since
 * a drop may start at a part of another drop that the text tells later.
 */
final class WiringWalk {

	private final List<Span> spans = new ArrayList<>();
	private final List<AttachedDevice> devices = new ArrayList<>();
	private final List<SupplyEntry> entries = new ArrayList<>();
	private final List<TerminatingResistor> terminators = new ArrayList<>();
	private final Map<String, Integer> towardsStart = new HashMap<>();
	private final Map<String, Integer> towardsEnd = new HashMap<>();
	private final Map<String, Fitting> fittings = new HashMap<>();
	private final Map<String, Boolean> firstOfBackbone = new HashMap<>();
	private int points;
	private int network;

	Wiring walk(Boat boat) {
		List<List<Wiring.BackboneEnds>> ends = new ArrayList<>();
		for (Network each : boat.networks()) {
			List<Wiring.BackboneEnds> ofThis = new ArrayList<>();
			for (Backbone backbone : each.backbones()) {
				place(backbone.elements());
				if (!backbone.elements().isEmpty()) {
					firstOfBackbone.put(backbone.elements().get(0).name(), true);
					ofThis.add(new Wiring.BackboneEnds(start(backbone.elements().get(0)),
							end(backbone.elements().get(backbone.elements().size() - 1))));
				}
			}
			each.drops().forEach(drop -> place(drop.legs()));
			each.feeds().forEach(feed -> place(feed.legs()));
			each.joins().forEach(join -> place(join.legs()));
			ends.add(ofThis);
			network++;
		}
		network = 0;
		for (Network each : boat.networks()) {
			each.backbones().forEach(backbone -> connect(backbone.elements()));
			each.drops().forEach(this::hang);
			each.feeds().forEach(this::enter);
			each.joins().forEach(this::join);
			network++;
		}
		return new Wiring(points, spans, devices, entries, terminators, ends, towardsStart, towardsEnd);
	}

	private void place(List<Element> elements) {
		for (Element element : elements) {
			int start = points++;
			int end = element instanceof CableRun || PartSpans.hasTwoSides(((Fitting) element).part()) ? points++ : start;
			towardsStart.put(element.name(), start);
			towardsEnd.put(element.name(), end);
			if (element instanceof Fitting fitting) {
				fittings.put(fitting.name(), fitting);
			}
		}
	}

	private void connect(List<Element> elements) {
		for (int i = 0; i < elements.size(); i++) {
			Element element = elements.get(i);
			if (i > 0) {
				Element before = elements.get(i - 1);
				contact(end(before), start(element), before.towardsEnd(), element.towardsStart(), before, element.name());
			}
			inside(element);
		}
	}

	private void inside(Element element) {
		int start = start(element);
		int end = end(element);
		if (element instanceof CableRun run) {
			add(start, end, Medium.Conductors.of(run.length(), run.cable()), Span.Passes.ALL, element);
			return;
		}
		Fitting fitting = (Fitting) element;
		Part part = fitting.part();
		if (part instanceof Tap tap) {
			tap(fitting, tap);
		} else if (part instanceof Cord cord && cord.fuse().isPresent()) {
			int behindFuse = points++;
			add(start, behindFuse, PartSpans.between(part).orElseThrow().medium(), Span.Passes.ALL, element);
			add(behindFuse, end, new Medium.Inside(cord.fuse(), Optional.empty()), Span.Passes.ALL, element);
		} else {
			PartSpans.between(part).ifPresent(inside -> add(start, end, inside.medium(), inside.passes(), element));
		}
		if (part instanceof Terminator terminator) {
			terminators.add(new TerminatingResistor(terminator.resistance(), start, network, fitting.name()));
		} else if (part instanceof Cord cord) {
			cord.terminates().ifPresent(resistance -> terminators.add(new TerminatingResistor(Optional.of(resistance), start, network, fitting.name())));
		}
		fitting.details().device().ifPresent(device -> within(fitting, device));
	}

	/** The device behind an in-line terminator, or the one that the backbone runs through. */
	private void within(Fitting fitting, FittedDevice device) {
		if (fitting.part() instanceof DeviceModel) {
			attach(device, Optional.empty(), start(fitting), fitting.name());
		} else {
			Optional<Connector> behind = fitting.part().ends().second().or(() -> fitting.part().ends().first());
			int plugged = points++;
			contact(end(fitting), plugged, behind, device.model().connector(Optional.empty()), fitting, device.name());
			attach(device, Optional.empty(), alongLead(plugged, device, fitting.origin()), fitting.name());
		}
	}

	private void tap(Fitting fitting, Tap tap) {
		int start = start(fitting);
		int end = end(fitting);
		PartSpans.TapInside inside = PartSpans.TapInside.of(fitting, tap);
		int entry = points++;
		int secondEntry = inside.entries() == 2 ? points++ : entry;
		add(start, end, Medium.Inside.JOINED, new Span.Passes(false, true, true), fitting);
		add(entry, start, Medium.Inside.JOINED, new Span.Passes(false, true, false), fitting);
		inside.start().ifPresent(way -> add(entry, start, way.medium(), way.passes(), fitting));
		inside.end().ifPresent(way -> add(secondEntry, end, way.medium(), way.passes(), fitting));
		if (secondEntry != entry) {
			add(secondEntry, end, Medium.Inside.JOINED, new Span.Passes(false, true, false), fitting);
		}
		List<String> supplies = fitting.details().feeds();
		for (int i = 0; i < supplies.size(); i++) {
			entries.add(new SupplyEntry(supplies.get(i), i == 0 ? entry : secondEntry, network, fitting.name(), fitting.origin()));
		}
	}

	private void hang(Drop drop) {
		Branch branch = along(drop.from(), drop.legs(), drop.name(), drop.origin());
		if (drop.device().isEmpty() || branch == null) {
			return;
		}
		FittedDevice device = drop.device().get();
		int plugged = points++;
		contact(branch.point, plugged, branch.open, device.model().connector(drop.devicePort()), drop.origin(), branch.element, device.name());
		attach(device, drop.devicePort(), alongLead(plugged, device, drop.origin()), drop.name());
	}

	private int alongLead(int plugged, FittedDevice device, Origin origin) {
		if (device.model().lead().isEmpty()) {
			return plugged;
		}
		DeviceModel.Lead lead = device.model().lead().get();
		int behind = points++;
		spans.add(new Span(plugged, behind, Medium.Conductors.of(lead.length(), lead.cable()), Span.Passes.ALL, device.name(),
				Optional.empty(), network, origin));
		return behind;
	}

	private void attach(FittedDevice device, Optional<String> port, int point, String branch) {
		devices.add(new AttachedDevice(device, port, point, network, branch));
		device.model().terminates().ifPresent(resistance -> terminators.add(
				new TerminatingResistor(Optional.of(resistance), point, network, device.name())));
	}

	private void enter(Feed feed) {
		Branch branch = along(feed.from(), feed.legs(), feed.name(), feed.origin());
		if (branch != null) {
			feed.supplies().forEach(supply -> entries.add(new SupplyEntry(supply, branch.point, network, feed.name(), feed.origin())));
		}
	}

	private void join(Join join) {
		Branch branch = along(join.from(), join.legs(), join.name(), join.origin());
		Integer target = pointOf(join.to());
		if (branch != null && target != null) {
			contact(branch.point, target, branch.open, portOf(join.to()), join.origin(), branch.element, join.to().part());
		}
	}

	/** Where a branch ends. */
	private record Branch(int point, Optional<Connector> open, String element) {
	}

	/** The branch along its legs; null if its port is nowhere, which the resolver has told. */
	private Branch along(PortRef from, List<Element> legs, String name, Origin origin) {
		Integer point = pointOf(from);
		if (point == null) {
			return null;
		}
		Optional<Connector> port = portOf(from);
		if (legs.isEmpty()) {
			return new Branch(point, port, from.part());
		}
		Element first = legs.get(0);
		contact(point, start(first), port, first.towardsStart(), origin, from.part(), first.name());
		connect(legs);
		Element last = legs.get(legs.size() - 1);
		return new Branch(end(last), last.towardsEnd(), last.name());
	}

	private Integer pointOf(PortRef port) {
		return firstOfBackbone.containsKey(port.part()) ? towardsStart.get(port.part()) : towardsEnd.get(port.part());
	}

	private Optional<Connector> portOf(PortRef port) {
		Fitting fitting = fittings.get(port.part());
		if (fitting == null) {
			return Optional.empty();
		}
		if (port.port().isPresent() && fitting.part() instanceof Tee tee) {
			return tee.ports().getOrDefault(port.port().get(), Optional.empty());
		}
		return firstOfBackbone.containsKey(port.part()) ? fitting.towardsStart() : fitting.towardsEnd();
	}

	private void contact(int from, int to, Optional<Connector> one, Optional<Connector> other, Element element, String otherName) {
		contact(from, to, one, other, element.origin(), element.name(), otherName);
	}

	private void contact(int from, int to, Optional<Connector> one, Optional<Connector> other, Origin origin, String name, String otherName) {
		Optional<ConnectorFamily> family = one.map(Connector::family).filter(mine -> other.map(Connector::family)
				.map(its -> resistance(mine).compareTo(resistance(its)) >= 0).orElse(true)).or(() -> other.map(Connector::family));
		spans.add(new Span(from, to, new Medium.Contact(family), Span.Passes.ALL, name, Optional.of(otherName), network, origin));
	}

	private static Resistance resistance(ConnectorFamily family) {
		return family.contact().orElse(Medium.Contact.USUAL);
	}

	private void add(int from, int to, Medium medium, Span.Passes passes, Element element) {
		spans.add(new Span(from, to, medium, passes, element.name(), Optional.empty(), network, element.origin()));
	}

	private int start(Element element) {
		return towardsStart.get(element.name());
	}

	private int end(Element element) {
		return towardsEnd.get(element.name());
	}
}
