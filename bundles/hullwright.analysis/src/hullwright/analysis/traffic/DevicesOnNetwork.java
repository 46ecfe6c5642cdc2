/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import hullwright.network.Backbone;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.data.SentMessage;
import hullwright.network.part.DeviceModel;

/**
 * The devices of a network, at drops, behind in-line terminators and in the backbone, each once, and by which of their ports
 * they are on it.
 */
public final class DevicesOnNetwork {

	private final Map<String, FittedDevice> devices = new LinkedHashMap<>();
	private final Map<String, Set<String>> ports = new LinkedHashMap<>();

	private DevicesOnNetwork() {
	}

	/** The devices of a network. */
	public static DevicesOnNetwork of(Network network) {
		DevicesOnNetwork found = new DevicesOnNetwork();
		for (Backbone backbone : network.backbones()) {
			for (Element element : backbone.elements()) {
				if (element instanceof Fitting fitting && fitting.details().device().isPresent()) {
					found.addInBackbone(fitting, fitting.details().device().get());
				}
			}
		}
		for (Drop drop : network.drops()) {
			drop.device().ifPresent(device -> found.add(device, drop.devicePort().or(() -> firstPort(device.model()))));
		}
		return found;
	}

	/** A backbone runs through a device by both of its ports; behind a terminator a device has one. */
	private void addInBackbone(Fitting fitting, FittedDevice device) {
		add(device, firstPort(device.model()));
		if (fitting.part() instanceof DeviceModel) {
			ports.get(device.name()).addAll(device.model().ports().keySet());
		}
	}

	private void add(FittedDevice device, Optional<String> port) {
		devices.putIfAbsent(device.name(), device);
		ports.computeIfAbsent(device.name(), name -> new LinkedHashSet<>()).addAll(port.stream().toList());
	}

	/** The port by which a device hangs on a drop that names none. */
	private static Optional<String> firstPort(DeviceModel model) {
		return model.ports().keySet().stream().findFirst();
	}

	/** The devices, in the order of the text. */
	public Collection<FittedDevice> all() {
		return devices.values();
	}

	/** By which of its ports a device is on the network; none if its catalog names none. */
	public Set<String> portsOf(FittedDevice device) {
		return Collections.unmodifiableSet(ports.get(device.name()));
	}

	/** Whether a device tells a message on this network: by any port, or by one that is on it. */
	boolean tells(FittedDevice device, SentMessage message) {
		return message.port().isEmpty() || ports.get(device.name()).contains(message.port().get());
	}
}
