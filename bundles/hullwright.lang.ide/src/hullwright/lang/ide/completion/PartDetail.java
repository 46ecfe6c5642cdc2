/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.completion;

import hullwright.network.part.Adapter;
import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Part;
import hullwright.network.part.Tee;
import hullwright.spec.DeviceType;
import hullwright.spec.PartType;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Says in a line what a part is: its title, what it loads the bus with, its connectors.
 */
final class PartDetail {

	private PartDetail() {
	}

	static String of(PartType type, Part part) {
		List<String> words = new ArrayList<>();
		if (type.getTitle() != null && !type.getTitle().isBlank()) {
			words.add(type.getTitle());
		}
		if (type instanceof DeviceType device && device.getLoad() != null) {
			words.add(NodeModelUtils.getTokenText(NodeModelUtils.findActualNodeFor(device.getLoad())));
		}
		connectors(part).ifPresent(words::add);
		if (part instanceof Tee tee && !tee.ports().isEmpty()) {
			words.add(tee.ports().size() == 1 ? "1 port" : tee.ports().size() + " ports");
		} else if (part instanceof Cable cable && cable.rated().isPresent()) {
			words.add("rated " + cable.rated().get());
		} else if (part instanceof Adapter adapter && !adapter.carriesPower()) {
			words.add("carries no power");
		}
		return String.join(", ", words);
	}

	private static Optional<String> connectors(Part part) {
		if (part instanceof DeviceModel device && device.lead().isEmpty() && device.ports().size() > 1) {
			return Optional.of(device.ports().entrySet().stream().map(port -> port.getKey() + " " + port.getValue()).collect(Collectors.joining(", ")));
		}
		Optional<Connector> first = part.ends().first();
		Optional<Connector> second = part.ends().second();
		return second.isEmpty() ? first.map(Connector::toString) : first.map(one -> one + " to " + second.get());
	}
}
