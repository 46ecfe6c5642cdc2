/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import hullwright.quantity.Current;
import hullwright.quantity.Power;
import hullwright.quantity.Quantity;
import hullwright.quantity.Voltage;
import hullwright.spec.Catalog;
import hullwright.spec.DevicePort;
import hullwright.spec.DeviceType;
import hullwright.spec.End;
import hullwright.spec.Family;
import hullwright.spec.Gender;
import hullwright.spec.LinePort;
import hullwright.spec.Load;
import hullwright.spec.LoadBehaviour;
import hullwright.spec.PartType;
import hullwright.spec.PortGroup;
import hullwright.spec.TeeType;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The parts of the standard catalogs, and what a test asks of them again and again. */
final class StandardParts {

	private static final HullTexts TEXTS = new HullTexts();

	/** Cable, connectors and the devices on the bus. */
	static final Catalog PARTS = catalog("parts");

	/** Units with serial lines, gateways and wireless. */
	static final Catalog SERIAL = catalog("serial");

	private StandardParts() {
	}

	private static Catalog catalog(String name) {
		return (Catalog) HullTexts.spec(TEXTS.builtIn(name)).getDeclarations().get(0);
	}

	/** All parts of a kind, of both catalogs. */
	static <T extends PartType> List<T> all(Class<T> type) {
		return Stream.of(PARTS, SERIAL).flatMap(catalog -> catalog.getParts().stream())
				.filter(type::isInstance).map(type::cast).toList();
	}

	static Family family(String name) {
		return PARTS.getFamilies().stream().filter(family -> family.getName().equals(name)).findFirst().orElseThrow();
	}

	/** Devices with a connector to the bus. */
	static List<DeviceType> busDevices() {
		return all(DeviceType.class).stream().filter(device -> !busEnds(device).isEmpty()).toList();
	}

	/** Devices with a serial line. */
	static List<DeviceType> serialUnits() {
		return all(DeviceType.class).stream().filter(device -> device.getPorts().stream().anyMatch(LinePort.class::isInstance)).toList();
	}

	/** The connectors of a device to the bus. */
	static List<End> busEnds(DeviceType device) {
		List<End> ends = new ArrayList<>();
		if (device.getLead() != null) {
			ends.add(device.getLead().getEnd());
		}
		device.getPorts().stream().filter(DevicePort.class::isInstance).forEach(port -> ends.add(((DevicePort) port).getEnd()));
		return ends;
	}

	/** The two ends, or the one, of a piece of hardware, without the ports for drops. */
	@SuppressWarnings("unchecked")
	static List<End> ends(PartType part) {
		EStructuralFeature ends = part.eClass().getEStructuralFeature("ends");
		return ends == null ? List.of() : (List<End>) part.eGet(ends);
	}

	/** Everything of a part that another part could be plugged to. */
	static List<End> connectors(PartType part) {
		List<End> connectors = new ArrayList<>(part instanceof DeviceType device ? busEnds(device) : ends(part));
		if (part instanceof TeeType tee) {
			tee.getPorts().stream().map(PortGroup::getEnd).forEach(connectors::add);
		}
		connectors.removeIf(end -> end.getGender() == Gender.BARE);
		return connectors;
	}

	static boolean mate(End one, End other) {
		return one.getFamily() == other.getFamily()
				&& (one.getGender() == Gender.MALE && other.getGender() == Gender.FEMALE
						|| one.getGender() == Gender.FEMALE && other.getGender() == Gender.MALE);
	}

	/** The most that a device draws from the network in operation, at the lowest voltage of the network. */
	static Current mostCurrent(Load load) {
		Voltage lowest = new Voltage(9);
		Quantity stated = load.getMost() != null ? load.getMost() : load.getNominal();
		if (stated instanceof Power power) {
			double volts = load.getBehaviour() == LoadBehaviour.CONSTANT_POWER || load.getReference() == null
					? lowest.volts()
					: load.getReference().volts();
			return new Current(power.watts() / volts);
		}
		return (Current) stated;
	}
}
