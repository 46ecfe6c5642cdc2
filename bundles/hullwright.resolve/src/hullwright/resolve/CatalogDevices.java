/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.network.part.DeviceData;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.DevicePower;
import hullwright.network.part.Load;
import hullwright.network.part.OwnSupply;
import hullwright.network.part.PartIdentity;
import hullwright.network.part.Radio;
import hullwright.network.part.SerialPort;
import hullwright.quantity.Power;
import hullwright.quantity.Resistance;
import hullwright.spec.CableType;
import hullwright.spec.DevicePort;
import hullwright.spec.DeviceType;
import hullwright.spec.LinePort;
import hullwright.spec.Port;
import hullwright.spec.WirelessPort;

/**
 * Copies devices from catalogs into records.
 */
final class CatalogDevices {

	private final CatalogMessages messages;
	private final CatalogConnectors connectors;
	private final Function<CableType, Optional<Cable>> cables;

	/**
	 * @param cables gives the record of a cable
	 */
	CatalogDevices(CatalogMessages messages, CatalogConnectors connectors, Function<CableType, Optional<Cable>> cables) {
		this.messages = messages;
		this.connectors = connectors;
		this.cables = cables;
	}

	DeviceModel copy(PartIdentity identity, DeviceType type) {
		Map<String, Connector> networkPorts = new LinkedHashMap<>();
		Map<String, SerialPort> lines = new LinkedHashMap<>();
		Map<String, Radio> radios = new LinkedHashMap<>();
		for (Port port : type.getPorts()) {
			if (port instanceof DevicePort bus) {
				connectors.connector(bus.getEnd()).ifPresent(connector -> networkPorts.putIfAbsent(port.getName(), connector));
			} else if (port instanceof LinePort line) {
				lines.putIfAbsent(port.getName(), line(line));
			} else if (port instanceof WirelessPort radio) {
				radios.putIfAbsent(port.getName(), new Radio(some(radio.getClients()), Optional.ofNullable(radio.getDelay())));
			}
		}
		Optional<DeviceModel.Lead> lead = Optional.ofNullable(type.getLead())
				.map(stated -> new DeviceModel.Lead(stated.getLength(), cables.apply(stated.getCable()), connectors.connector(stated.getEnd())));
		List<Set<String>> isolations = type.getIsolations().stream()
				.map(pair -> Set.copyOf(new HashSet<>(Copying.names(List.of(pair.getOne(), pair.getOther())))))
				.toList();
		return new DeviceModel(identity, lead, networkPorts, lines, radios, isolations, power(type), Optional.ofNullable(type.getTerminates()),
				Optional.ofNullable(type.getInputResistance()), type.isEarthsShield(), Math.max(1, type.getAddresses()), Optional.ofNullable(type.getMaker()), data(type));
	}

	private static SerialPort line(LinePort line) {
		SerialPort.Level level = switch (line.getLevel()) {
		case DIFFERENTIAL -> SerialPort.Level.DIFFERENTIAL;
		case SINGLE_ENDED -> SerialPort.Level.SINGLE_ENDED;
		case RS232 -> SerialPort.Level.RS232;
		default -> SerialPort.Level.UNSTATED;
		};
		return new SerialPort(line.isTalker(), line.isListener(), level, line.isIsolated(), line.getRates(), some(line.getDrives()),
				Optional.ofNullable(line.getDrive()), Optional.ofNullable(line.getDraws()), Optional.ofNullable(line.getBuffer()));
	}

	private static Optional<Integer> some(int number) {
		return number == 0 ? Optional.empty() : Optional.of(number);
	}

	private static DevicePower power(DeviceType type) {
		Optional<OwnSupply> own = type.isOwnSupply()
				? Optional.of(new OwnSupply(type.isIsolated(), Optional.ofNullable(type.getOwnLoad())))
				: Optional.empty();
		return new DevicePower(own, Optional.ofNullable(type.getLowest()), Optional.ofNullable(type.getHighest()),
				Optional.ofNullable(type.getLoad()).map(CatalogDevices::load));
	}

	private static Load load(hullwright.spec.Load load) {
		return new Load(load.getNominal(), behaviour(load), Optional.ofNullable(load.getReference()), Optional.ofNullable(load.getMost()),
				Optional.ofNullable(load.getStart()), Optional.ofNullable(load.getStartTime()));
	}

	private static Load.Behaviour behaviour(hullwright.spec.Load load) {
		return switch (load.getBehaviour()) {
		case CONSTANT_CURRENT -> Load.Behaviour.CONSTANT_CURRENT;
		case CONSTANT_POWER -> Load.Behaviour.CONSTANT_POWER;
		case RESISTIVE -> Load.Behaviour.RESISTIVE;
		default -> load.getNominal() instanceof Power ? Load.Behaviour.CONSTANT_POWER
				: load.getNominal() instanceof Resistance ? Load.Behaviour.RESISTIVE : Load.Behaviour.CONSTANT_CURRENT;
		};
	}

	private DeviceData data(DeviceType type) {
		return new DeviceData(type.getSends().stream().map(messages::sending).toList(),
				type.getWants().stream().map(messages::wanting).toList(),
				type.getShows().stream().map(messages::showing).toList(),
				type.getTurns().stream().map(messages::turning).toList(),
				type.getPasses().stream().map(messages::passing).toList(), type.isPassesSettable());
	}
}
