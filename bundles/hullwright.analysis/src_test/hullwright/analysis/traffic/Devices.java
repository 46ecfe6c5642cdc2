/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.Backbone;
import hullwright.network.Drop;
import hullwright.network.Element;
import hullwright.network.FittedDevice;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.NetworkKind;
import hullwright.network.Origin;
import hullwright.network.PortRef;
import hullwright.network.data.Message;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Pgn;
import hullwright.network.data.SentMessage;
import hullwright.network.data.Timing;
import hullwright.network.part.Connector;
import hullwright.network.part.ConnectorFamily;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.DevicePower;
import hullwright.network.part.Gender;
import hullwright.network.part.Part;
import hullwright.network.part.PartIdentity;
import hullwright.quantity.Duration;

/**
 * Builds devices, what they send, and networks of them. Lengths, frames, intervals and priorities of the PGNs are those of the open
 * CANboat PGN database; the devices are invented.
 */
final class Devices {

	static final Pgn REQUEST = pgn(59904, Pgn.Transport.SINGLE, 3, 6);
	static final Pgn RUDDER = pgn(127245, Pgn.Transport.SINGLE, 8, 2);
	static final Pgn HEADING = pgn(127250, Pgn.Transport.SINGLE, 8, 2);
	static final Pgn ENGINE = pgn(127489, Pgn.Transport.FAST, 26, 2);
	static final Pgn FLUID_LEVEL = pgn(127505, Pgn.Transport.SINGLE, 8, 6);
	static final Pgn DEPTH = pgn(128267, Pgn.Transport.SINGLE, 8, 3);
	static final Pgn GNSS_POSITION = pgn(129029, Pgn.Transport.FAST, 43, 3);
	static final Pgn AIS_POSITION = pgn(129038, Pgn.Transport.FAST, 28, 4);
	static final Pgn SATELLITES = pgn(129540, Pgn.Transport.FAST, 135, 6);

	private Devices() {
	}

	static Pgn pgn(int number, Pgn.Transport transport, int length, Integer priority) {
		return new Pgn(number, "Test", transport, length, false, Timing.UNSTATED, Optional.ofNullable(priority), false, List.of());
	}

	static Timing every(double seconds) {
		return Timing.every(new Duration(seconds));
	}

	static Timing onEvent() {
		return new Timing(Optional.empty(), true, Optional.empty());
	}

	static Timing onEvent(double apart) {
		return new Timing(Optional.empty(), true, Optional.of(new Duration(apart)));
	}

	static SentMessage sends(Message message, Timing timing) {
		return new SentMessage(new MessageUse(message, Optional.empty()), timing, Optional.empty(), Optional.empty());
	}

	static SentMessage sends(Message message, Timing timing, int instance) {
		return new SentMessage(new MessageUse(message, Optional.empty()), timing, Optional.of(instance), Optional.empty());
	}

	static SentMessage sends(Message message, Timing timing, String port) {
		return new SentMessage(new MessageUse(message, Optional.empty()), timing, Optional.empty(), Optional.of(port));
	}

	static FittedDevice device(String name, List<String> ports, SentMessage... sends) {
		Map<String, Connector> connectors = new LinkedHashMap<>();
		ConnectorFamily family = new ConnectorFamily("plug", "", true, Optional.empty(), Optional.empty());
		ports.forEach(port -> connectors.put(port, new Connector(family, Gender.MALE)));
		DeviceModel model = DeviceModel.of(PartIdentity.named("Test", name), Optional.empty(), connectors, DevicePower.UNSTATED);
		FittedDevice plain = FittedDevice.of(name, model, Origin.nowhere(name));
		return new FittedDevice(name, model, plain.place(), plain.label(), plain.settings(), Arrays.asList(sends), plain.origin());
	}

	static FittedDevice device(String name, SentMessage... sends) {
		return device(name, List.of("bus"), sends);
	}

	static Drop drop(FittedDevice device, String port) {
		return new Drop(device.name(), new PortRef("block", Optional.of(1)), List.of(), Optional.of(device), Optional.ofNullable(port),
				Origin.nowhere(device.name()));
	}

	static Drop prepared() {
		return new Drop("prepared", new PortRef("block", Optional.of(2)), List.of(), Optional.empty(), Optional.empty(), Origin.nowhere("prepared"));
	}

	/** A device behind a part of the backbone, or in it. */
	static Fitting inBackbone(FittedDevice device, Part part) {
		return new Fitting(device.name(), part, false, Fitting.Details.UNSTATED, Origin.nowhere(device.name())).with(Optional.of(device));
	}

	static Network network(List<Element> backbone, Drop... drops) {
		Origin nowhere = Origin.nowhere("bus");
		return new Network("bus", NetworkKind.INSTRUMENT_BUS, List.of(new Backbone("bus.backbone", backbone, nowhere)), List.of(drops),
				List.of(), List.of(), List.of(), nowhere);
	}

	/** The traffic of devices that hang on drops. */
	static NetworkTraffic traffic(FittedDevice... devices) {
		List<Drop> drops = new ArrayList<>();
		for (FittedDevice device : devices) {
			drops.add(drop(device, null));
		}
		return NetworkTraffic.of(network(List.of(), drops.toArray(Drop[]::new)));
	}
}
