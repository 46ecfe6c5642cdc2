/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import hullwright.network.part.Adapter;
import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Ends;
import hullwright.network.part.FeedThrough;
import hullwright.network.part.Gender;
import hullwright.network.part.Part;
import hullwright.network.part.PartIdentity;
import hullwright.network.part.Tap;
import hullwright.network.part.Tee;
import hullwright.network.part.Terminator;
import hullwright.quantity.Quantity;
import hullwright.spec.AdapterType;
import hullwright.spec.CableType;
import hullwright.spec.Catalog;
import hullwright.spec.DeviceType;
import hullwright.spec.End;
import hullwright.spec.FeedSides;
import hullwright.spec.FeedThroughType;
import hullwright.spec.PartType;
import hullwright.spec.PortGroup;
import hullwright.spec.TapType;
import hullwright.spec.TeeType;
import hullwright.spec.TerminatorType;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Copies parts from catalogs into records, each once.
 */
final class CatalogParts {

	/** A run of ports longer than this is a slip of the pen, and would only cost memory. */
	private static final int MOST_PORTS = 1000;

	private final Map<PartType, Part> copied = new IdentityHashMap<>();

	/** The record of a catalog part, or empty if the text does not say which part it is. */
	Optional<Part> of(PartType type) {
		return type == null || type.eIsProxy() ? Optional.empty() : Optional.of(copied.computeIfAbsent(type, CatalogParts::copy));
	}

	/** The record of a cable, or empty if the text does not say which. */
	Optional<Cable> cable(CableType type) {
		return of(type).map(Cable.class::cast);
	}

	/** The record of a device, or empty if the text does not say which. */
	Optional<DeviceModel> device(DeviceType type) {
		return of(type).map(DeviceModel.class::cast);
	}

	private static Part copy(PartType type) {
		PartIdentity identity = identity(type);
		if (type instanceof CableType cable) {
			return new Cable(identity, ends(cable.getEnds()), conductor(cable.getPower()), conductor(cable.getSignal()),
					stated(cable.getRated()), stated(cable.getDelay()), stated(cable.getMaxBackbone()), cable.getStock());
		} else if (type instanceof TerminatorType terminator) {
			return new Terminator(identity, ends(terminator.getEnds()), terminator.isInLine(), stated(terminator.getResistance()));
		} else if (type instanceof TeeType tee) {
			return new Tee(identity, ends(tee.getEnds()), ports(tee.getPorts()));
		} else if (type instanceof TapType tap) {
			return new Tap(identity, ends(tap.getEnds()), tap.getFeeds() == FeedSides.BOTH, stated(tap.getFuse()));
		} else if (type instanceof FeedThroughType feedThrough) {
			return new FeedThrough(identity, ends(feedThrough.getEnds()), feedThrough.isWatertight());
		} else if (type instanceof AdapterType adapter) {
			return new Adapter(identity, ends(adapter.getEnds()), stated(adapter.getLength()), adapter.isCarriesPower(),
					stated(adapter.getRated()));
		}
		return device(identity, (DeviceType) type);
	}

	private static DeviceModel device(PartIdentity identity, DeviceType type) {
		Map<String, Connector> ports = new TreeMap<>();
		type.getPorts().forEach(port -> connector(port.getEnd()).ifPresent(connector -> ports.put(port.getName(), connector)));
		Optional<DeviceModel.Lead> lead = Optional.ofNullable(type.getLead())
				.filter(stated -> stated.getLength() != null)
				.map(stated -> new DeviceModel.Lead(stated.getLength(), connector(stated.getEnd())));
		return new DeviceModel(identity, lead, ports, type.isOwnSupply(), type.isIsolated(), stated(type.getLowest()),
				stated(type.getHighest()), stated(type.getLoad()));
	}

	private static PartIdentity identity(PartType type) {
		String catalog = type.eContainer() instanceof Catalog home ? text(home.getName()) : "";
		return new PartIdentity(catalog, text(type.getName()), text(type.getTitle()), text(type.getArticle()), text(type.getSource()));
	}

	private static Map<Integer, Optional<Connector>> ports(List<PortGroup> groups) {
		Map<Integer, Optional<Connector>> ports = new TreeMap<>();
		for (PortGroup group : groups) {
			int last = Math.min(Math.max(group.getFirst(), group.getLast()), group.getFirst() + MOST_PORTS);
			for (int number = group.getFirst(); number <= last; number++) {
				ports.put(number, connector(group.getEnd()));
			}
		}
		return ports;
	}

	private static Optional<Cable.Conductor> conductor(hullwright.spec.Conductor conductor) {
		return Optional.ofNullable(conductor)
				.filter(stated -> stated.getSize() != null)
				.map(stated -> new Cable.Conductor(stated.getSize(), stated(stated.getResistance())));
	}

	private static Ends ends(List<End> ends) {
		return new Ends(ends.isEmpty() ? Optional.empty() : connector(ends.get(0)), ends.size() < 2 ? Optional.empty() : connector(ends.get(1)));
	}

	private static Optional<Connector> connector(End end) {
		if (end == null || end.getFamily() == null || end.getFamily().eIsProxy()) {
			return Optional.empty();
		}
		Gender gender = end.getGender() == hullwright.spec.Gender.MALE ? Gender.MALE : Gender.FEMALE;
		return Optional.of(new Connector(end.getFamily().getName(), gender));
	}

	private static <Q extends Quantity> Optional<Q> stated(Q quantity) {
		return Optional.ofNullable(quantity);
	}

	static String text(String text) {
		return text == null ? "" : text;
	}
}
