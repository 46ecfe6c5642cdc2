/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import hullwright.analysis.wiring.SparePort;
import hullwright.network.Network;
import hullwright.network.data.Sending;
import hullwright.network.data.Wanting;
import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.network.part.DeviceModel;
import hullwright.quantity.Length;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.edit.AddDrop;
import hullwright.rules.edit.Fix;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Devices of the catalogs that tell what is missing, each on a drop from a spare port: those that tell least besides first.
 */
final class TellingDevices {

	/** A drop as short as the trade sells it; the yard knows how long it has to be. */
	private static final Length DROP = new Length(1);

	private TellingDevices() {
	}

	/** One fix for each device, where the network has a spare port. */
	static List<Fix> of(BoatUnderCheck boat, Network network, Wanting wanting) {
		Optional<SparePort> port = boat.figures().sparePortsOf(network).stream().filter(spare -> !spare.capped() && spare.connector().isPresent()).findFirst();
		if (port.isEmpty()) {
			return List.of();
		}
		Connector connector = port.get().connector().get();
		return boat.boat().partsOnOffer().of(DeviceModel.class).stream()
				.filter(model -> model.data().wants().isEmpty() && model.data().sends().stream().anyMatch(sending -> meets(sending, wanting)))
				.filter(model -> model.ends().first().filter(connector::mates).isPresent())
				.filter(model -> model.lead().isPresent() || carries(boat, connector))
				.sorted(Comparator.comparingInt((DeviceModel model) -> model.data().sends().size()).thenComparing(model -> model.identity().name()))
				.map(model -> fix(network, port.get(), model)).toList();
	}

	private static boolean meets(Sending sending, Wanting wanting) {
		boolean often = wanting.atLeastEvery().isEmpty()
				|| sending.timing().every().filter(every -> every.seconds() <= wanting.atLeastEvery().get().seconds()).isPresent();
		return often && wanting.uses().stream().anyMatch(use -> use.covers(sending.use()));
	}

	/** Whether some cable on offer goes between such a port and what would plug into it. */
	private static boolean carries(BoatUnderCheck boat, Connector port) {
		return boat.boat().partsOnOffer().of(Cable.class).stream()
				.anyMatch(cable -> cable.ends().first().filter(end -> end.family().equals(port.family())).isPresent());
	}

	private static Fix fix(Network network, SparePort port, DeviceModel model) {
		String name = model.identity().name();
		return new Fix("Fit " + (model.identity().title().isEmpty() ? name : name + " (" + model.identity().title() + ")") + " on " + port.label(), Fix.Reach.DESIGN,
				List.of(new AddDrop(network.origin(), port.label(), model.lead().isPresent() ? Optional.empty() : Optional.of(DROP), name, model.identity())));
	}
}
