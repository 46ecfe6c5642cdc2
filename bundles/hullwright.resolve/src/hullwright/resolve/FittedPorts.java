/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.Backbone;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.Fitting;
import hullwright.network.Join;
import hullwright.network.PortRef;
import hullwright.network.part.Connector;
import hullwright.network.part.Part;
import hullwright.network.part.Tee;

/**
 * The connectors of the ports of one network of one boat, and the laying of what starts at them.
 */
final class FittedPorts {

	private final Map<String, Part> parts = new HashMap<>();

	private FittedPorts() {
	}

	static FittedPorts of(List<Backbone> backbones, List<Drop> drops) {
		FittedPorts ports = new FittedPorts();
		backbones.forEach(backbone -> backbone.elements().forEach(ports::add));
		drops.forEach(drop -> drop.legs().forEach(ports::add));
		return ports;
	}

	private void add(Element element) {
		if (element instanceof Fitting fitting) {
			parts.putIfAbsent(fitting.name(), fitting.part());
		}
	}

	private Optional<Connector> connector(PortRef port) {
		return parts.get(port.part()) instanceof Tee tee
				? port.port().flatMap(number -> tee.ports().getOrDefault(number, Optional.empty()))
				: Optional.empty();
	}

	Drop lay(Drop drop) {
		Optional<Connector> meets = drop.device().flatMap(device -> device.model().connector(drop.devicePort()));
		return new Drop(drop.name(), drop.from(), Laying.lay(drop.legs(), connector(drop.from()), meets), drop.device(), drop.devicePort(), drop.origin());
	}

	Feed lay(Feed feed) {
		return new Feed(feed.name(), feed.from(), Laying.lay(feed.legs(), connector(feed.from()), Optional.empty()), feed.supplies(),
				feed.earthsShield(), feed.label(), feed.origin());
	}

	Join lay(Join join) {
		return new Join(join.name(), join.from(), Laying.lay(join.legs(), connector(join.from()), connector(join.to())), join.to(), join.origin());
	}
}
