/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.PortRef;
import hullwright.network.part.Connector;
import hullwright.network.part.Tee;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A port of a tee or a block that no cable is plugged into. A drop that is prepared for a device to come takes its port.
 *
 * @param part the tee or block
 * @param number the port
 * @param connector its connector, if the catalog says
 * @param capped whether a blank cap closes it
 */
public record SparePort(Fitting part, int number, Optional<Connector> connector, boolean capped) {

	/** The spare ports of a network: along its backbones, then on its drops, in the order of the text. */
	public static List<SparePort> of(Network network) {
		Set<PortRef> taken = new HashSet<>();
		network.drops().forEach(drop -> taken.add(drop.from()));
		network.feeds().forEach(feed -> taken.add(feed.from()));
		network.joins().forEach(join -> taken.addAll(List.of(join.from(), join.to())));
		Set<PortRef> capped = new HashSet<>();
		network.caps().forEach(cap -> capped.add(cap.port()));
		Map<String, Fitting> tees = new LinkedHashMap<>();
		Stream.concat(network.backbones().stream().flatMap(backbone -> backbone.elements().stream()), network.drops().stream().flatMap(drop -> drop.legs().stream()))
				.filter(Fitting.class::isInstance).map(Fitting.class::cast)
				.filter(fitting -> fitting.part() instanceof Tee).forEach(fitting -> tees.putIfAbsent(fitting.name(), fitting));
		List<SparePort> spare = new ArrayList<>();
		tees.forEach((name, fitting) -> ((Tee) fitting.part()).ports().forEach((number, connector) -> {
			PortRef port = new PortRef(name, Optional.of(number));
			if (!taken.contains(port)) {
				spare.add(new SparePort(fitting, number, connector, capped.contains(port)));
			}
		}));
		return List.copyOf(spare);
	}

	/** How the text names it: {@code dash.3}. */
	public String label() {
		return part.origin().simpleName() + "." + number;
	}
}
