/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.network.CableRun;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Origin;
import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Ends;
import hullwright.network.part.Tee;
import hullwright.quantity.Length;
import hullwright.spec.BackbonePart;
import hullwright.spec.CableLeg;
import hullwright.spec.Device;
import hullwright.spec.Leg;
import hullwright.spec.PartLeg;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A drop, with what some boats have of it.
 *
 * @param name the qualified name, that of its device
 * @param part the qualified name of the part it starts at
 * @param port the number of the port it starts at
 * @param portConnector the connector of that port, if the catalog says which
 * @param legs the cables and parts between, not yet laid
 * @param device the device at its end
 * @param prepared whether cable and port are there even where the device is not
 * @param origin its place in the text
 */
record DropPlan(String name, String part, int port, Optional<Connector> portConnector, List<Element> legs,
		Optional<FittedDevice> device, boolean prepared, Origin origin) {

	/** The drop with its device. */
	Drop fitted() {
		Optional<Connector> meets = device.map(FittedDevice::model).map(DeviceModel::ends).flatMap(Ends::first);
		return new Drop(name, part, port, Laying.lay(legs, portConnector, meets), device, origin);
	}

	/** The drop as it is prepared for a device to come. */
	Drop withoutDevice() {
		return new Drop(name, part, port, Laying.lay(legs, portConnector, Optional.empty()), Optional.empty(), origin);
	}

	/** The same drop to another device, or by another way; empty keeps what is there. */
	DropPlan changed(Optional<DeviceModel> otherModel, List<Element> otherLegs) {
		Optional<FittedDevice> changedDevice = device.map(old -> new FittedDevice(old.name(), otherModel.orElse(old.model()), old.place(),
				old.label(), old.origin()));
		return new DropPlan(name, part, port, portConnector, otherLegs.isEmpty() ? legs : otherLegs, changedDevice, prepared, origin);
	}

	static DropPlan of(hullwright.spec.Drop drop, CatalogParts parts, TextPlaces places, String network, Optional<Cable> usualCable) {
		Device device = drop.getDevice();
		BackbonePart from = drop.getFrom().getPart();
		String name = network + "." + device.getName();
		Optional<Connector> connector = parts.of(from.getType())
				.filter(Tee.class::isInstance)
				.flatMap(tee -> ((Tee) tee).ports().getOrDefault(drop.getFrom().getPort(), Optional.empty()));
		return new DropPlan(name, network + "." + from.getName(), drop.getFrom().getPort(), connector,
				legs(drop.getLegs(), name, parts, places, usualCable), device(device, parts, places, network), drop.isPrepared(),
				places.of(device, name));
	}

	static Optional<FittedDevice> device(Device device, CatalogParts parts, TextPlaces places, String network) {
		String name = network + "." + device.getName();
		return parts.device(device.getType()).map(model -> new FittedDevice(name, model, BackbonePlan.place(device.getPlace()),
				CatalogParts.text(device.getLabel()), places.of(device, name)));
	}

	static List<Element> legs(List<Leg> legs, String drop, CatalogParts parts, TextPlaces places, Optional<Cable> usualCable) {
		List<Element> copied = new ArrayList<>();
		for (Leg leg : legs) {
			String name = drop + ".leg-" + (copied.size() + 1);
			if (leg instanceof CableLeg cable) {
				Length length = cable.getLength() == null ? Length.ZERO : cable.getLength();
				copied.add(new CableRun(name, parts.cable(cable.getType()).or(() -> usualCable), length, false, places.of(leg, name)));
			} else {
				parts.of(((PartLeg) leg).getType()).ifPresent(part -> copied.add(new Fitting(name, part, false, Optional.empty(), "",
						List.of(), false, Optional.empty(), places.of(leg, name))));
			}
		}
		return List.copyOf(copied);
	}
}
