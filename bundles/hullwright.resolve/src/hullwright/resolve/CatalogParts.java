/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

import hullwright.network.part.Adapter;
import hullwright.network.part.Cable;
import hullwright.network.part.Cap;
import hullwright.network.part.Connector;
import hullwright.network.part.Cord;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.FeedThrough;
import hullwright.network.part.Fuse;
import hullwright.network.part.FuseKind;
import hullwright.network.part.Gender;
import hullwright.network.part.Isolator;
import hullwright.network.part.Part;
import hullwright.network.part.PartIdentity;
import hullwright.network.part.Suitability;
import hullwright.network.part.Tap;
import hullwright.network.part.Tee;
import hullwright.network.part.Terminator;
import hullwright.network.part.Zone;
import hullwright.quantity.Current;
import hullwright.quantity.Quantity;
import hullwright.spec.AdapterType;
import hullwright.spec.CableType;
import hullwright.spec.CapType;
import hullwright.spec.Catalog;
import hullwright.spec.CordType;
import hullwright.spec.DeviceType;
import hullwright.spec.FeedSides;
import hullwright.spec.FeedThroughType;
import hullwright.spec.FuseType;
import hullwright.spec.IsolatorType;
import hullwright.spec.PartType;
import hullwright.spec.PortGroup;
import hullwright.spec.TapType;
import hullwright.spec.TeeType;
import hullwright.spec.TerminatorType;

/**
 * Copies parts from catalogs into records, each once.
 */
final class CatalogParts {

	/** A run of ports longer than this is a slip of the pen, and would only cost memory. */
	private static final int MOST_PORTS = 1000;

	private final Map<PartType, Part> copied = new IdentityHashMap<>();
	private final CatalogMessages messages = new CatalogMessages();
	private final CatalogConnectors connectors = new CatalogConnectors();
	private final CatalogDevices devices = new CatalogDevices(messages, connectors, this::cable);

	/** The messages of the same catalogs. */
	CatalogMessages messages() {
		return messages;
	}

	/** The record of a catalog part, or empty if the text does not say which part it is. */
	Optional<Part> of(PartType type) {
		if (type == null || type.eIsProxy()) {
			return Optional.empty();
		}
		Part part = copied.get(type);
		if (part == null) {
			// a fuse inside a part is copied on the way, so computeIfAbsent will not do
			part = copy(type);
			copied.put(type, part);
		}
		return Optional.of(part);
	}

	/** The record of a cable, or empty if the text does not say which. */
	Optional<Cable> cable(CableType type) {
		return of(type).map(Cable.class::cast);
	}

	/** The record of a device, or empty if the text does not say which. */
	Optional<DeviceModel> device(DeviceType type) {
		return of(type).map(DeviceModel.class::cast);
	}

	/** A fuse of a rating, or empty if there is none. */
	Optional<Fuse> fuse(Current rating, FuseType kind) {
		return rating == null ? Optional.empty() : Optional.of(new Fuse(rating, of(kind).map(FuseKind.class::cast)));
	}

	private Part copy(PartType type) {
		PartIdentity identity = identity(type);
		if (type instanceof CableType cable) {
			return new Cable(identity, connectors.ends(cable.getEnds()), conductor(cable.getPower()), conductor(cable.getSignal()),
					stated(cable.getRated()), stated(cable.getDelay()), stated(cable.getImpedance()), stated(cable.getMaxBackbone()), cable.getStock());
		} else if (type instanceof TerminatorType terminator) {
			return new Terminator(identity, connectors.ends(terminator.getEnds()), terminator.isInLine(), stated(terminator.getResistance()));
		} else if (type instanceof TeeType tee) {
			return new Tee(identity, connectors.ends(tee.getEnds()), ports(tee.getPorts()));
		} else if (type instanceof TapType tap) {
			return new Tap(identity, connectors.ends(tap.getEnds()), onlySide(tap.getFeeds()), tap.isBreaksSupply(), fuse(tap.getFuse(), tap.getFuseType()));
		} else if (type instanceof IsolatorType isolator) {
			return new Isolator(identity, connectors.ends(isolator.getEnds()), isolator.isBreaksSupply(), isolator.isJoinsReturn());
		} else if (type instanceof FeedThroughType feedThrough) {
			return new FeedThrough(identity, connectors.ends(feedThrough.getEnds()), feedThrough.isWatertight());
		} else if (type instanceof AdapterType adapter) {
			return new Adapter(identity, connectors.ends(adapter.getEnds()), stated(adapter.getLength()), adapter.isCarriesPower(),
					conductor(adapter.getPower()), conductor(adapter.getSignal()), stated(adapter.getRated()));
		} else if (type instanceof CapType cap) {
			return new Cap(identity, connectors.ends(cap.getEnds()));
		} else if (type instanceof CordType cord) {
			return new Cord(identity, connectors.ends(cord.getEnds()), stated(cord.getLength()), conductor(cord.getPower()),
					fuse(cord.getFuse(), cord.getFuseType()), stated(cord.getRated()), stated(cord.getTerminates()));
		} else if (type instanceof FuseType fuse) {
			return new FuseKind(identity, fuse.getRatings(), stated(fuse.getDrop()), openings(fuse), stated(fuse.getInterrupts()));
		}
		return devices.copy(identity, (DeviceType) type);
	}

	private static List<FuseKind.Opening> openings(FuseType fuse) {
		return fuse.getOpenings().stream()
				.map(opening -> new FuseKind.Opening(opening.getTimes(), opening.getWithin()))
				.sorted(Comparator.comparingDouble(FuseKind.Opening::times))
				.toList();
	}

	private static Optional<Gender> onlySide(FeedSides sides) {
		return switch (sides) {
		case MALE -> Optional.of(Gender.MALE);
		case FEMALE -> Optional.of(Gender.FEMALE);
		default -> Optional.empty();
		};
	}

	private static PartIdentity identity(PartType type) {
		Set<Zone> zones = type.getSuits().stream().map(CatalogParts::zone).collect(Collectors.toSet());
		Optional<String> successor = Optional.ofNullable(type.getSuccessor()).map(next -> catalog(next) + "." + next.getName());
		return new PartIdentity(catalog(type), type.getName(), Copying.text(type.getTitle()), Copying.text(type.getArticle()),
				Copying.text(type.getSource()), successor, new Suitability(zones, stated(type.getCompassDistance())));
	}

	private static String catalog(PartType type) {
		return type.eContainer() instanceof Catalog home ? Copying.text(home.getName()) : "";
	}

	static Zone zone(hullwright.spec.Zone zone) {
		return Zone.valueOf(zone.name());
	}

	private Map<Integer, Optional<Connector>> ports(List<PortGroup> groups) {
		Map<Integer, Optional<Connector>> ports = new TreeMap<>();
		for (PortGroup group : groups) {
			long last = Math.min(Math.max(group.getFirst(), group.getLast()), group.getFirst() + (long) MOST_PORTS);
			for (int number = group.getFirst(); number <= last && number >= group.getFirst(); number++) {
				ports.put(number, connectors.connector(group.getEnd()));
			}
		}
		return ports;
	}

	private static Optional<Cable.Conductor> conductor(hullwright.spec.Conductor conductor) {
		return Optional.ofNullable(conductor).map(stated -> new Cable.Conductor(stated.getSize(), stated(stated.getResistance())));
	}

	private static <Q extends Quantity> Optional<Q> stated(Q quantity) {
		return Optional.ofNullable(quantity);
	}
}
