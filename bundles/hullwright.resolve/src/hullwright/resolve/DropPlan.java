/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Origin;
import hullwright.network.PortRef;
import hullwright.network.part.Cable;
import hullwright.spec.Device;
import hullwright.spec.PortReference;

/**
 * A drop, with what some boats have of it.
 *
 * @param name the qualified name
 * @param from the port it starts at
 * @param legs the cables and parts between, not yet laid
 * @param end what it ends at
 * @param deviceWhen when the device is fitted, within the boats that have the drop
 * @param prepared whether cable and port are there even where the device is not
 * @param origin its place in the text
 */
record DropPlan(String name, PortRef from, List<Element> legs, End end, FittedWhen deviceWhen, boolean prepared, Origin origin) {

	/**
	 * What a drop ends at.
	 *
	 * @param device the device that it declares
	 * @param other the qualified name of a device that is declared elsewhere
	 * @param port the port of that device
	 */
	record End(Optional<DevicePlan> device, Optional<String> other, Optional<String> port) {

		boolean isOpen() {
			return device.isEmpty() && other.isEmpty();
		}
	}

	/** The drop of a boat, not yet laid, or empty if the boat has none. */
	Optional<Drop> on(Order order, HullPlan hull, Map<String, FittedDevice> otherDevices) {
		if (hull.removes(name)) {
			return Optional.empty();
		}
		List<Element> way = hull.changed(hull.otherWay(name).orElse(legs));
		boolean wanted = deviceWhen.holds(order);
		Optional<FittedDevice> device = !wanted ? Optional.empty()
				: end.device.map(hull::changed).or(() -> end.other.map(otherDevices::get));
		if (device.isPresent() || prepared || wanted && end.isOpen()) {
			return Optional.of(new Drop(name, from, way, device, device.isPresent() ? end.port : Optional.empty(), origin));
		}
		return Optional.empty();
	}

	/** Copies a drop. A prepared drop without a condition is for a device that no boat has yet. */
	static DropPlan of(hullwright.spec.Drop drop, String network, Optional<Cable> usualCable, Copying copying) {
		PortRef from = port(drop.getFrom(), network);
		Device device = drop.getDevice();
		Device target = drop.getTarget();
		String own = device != null ? device.getName()
				: target != null ? target.getName() + "-" + Copying.name(drop.getTargetPort()).orElse("")
				: drop.getFrom().getPart().getName() + "-" + drop.getFrom().getPort();
		String name = network + "." + own;
		End end = new End(Optional.ofNullable(device).flatMap(declared -> DevicePlan.of(declared, copying)),
				Optional.ofNullable(target).map(copying.names()::of), Copying.name(drop.getTargetPort()));
		FittedWhen when = drop.isPrepared() && drop.getCondition() == null ? FittedWhen.NEVER : FittedWhen.of(drop.getCondition());
		return new DropPlan(name, from, RunPlan.legs(drop.getLegs(), name, network, usualCable, copying), end, when, drop.isPrepared(),
				copying.places().of(device != null ? device : drop, name));
	}

	static PortRef port(PortReference port, String network) {
		return new PortRef(network + "." + port.getPart().getName(), Optional.ofNullable(port.getPort()));
	}
}
