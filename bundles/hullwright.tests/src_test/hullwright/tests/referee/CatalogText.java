/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes the catalog of the parts that a described boat is made of.
 */
final class CatalogText {

	private final Map<String, String> families = new LinkedHashMap<>();
	private final Map<String, String> fuses = new LinkedHashMap<>();
	private final Map<String, String> parts = new LinkedHashMap<>();

	private CatalogText() {
	}

	static String of(DescribedBoat boat) {
		CatalogText catalog = new CatalogText();
		for (DescribedBoat.Net net : boat.networks()) {
			net.backbone().stream().filter(item -> !(item.kind() instanceof PartKind.DeviceKind)).forEach(item -> catalog.add(item.kind()));
			net.drops().forEach(drop -> drop.legs().forEach(leg -> catalog.add(leg.kind())));
			net.feeds().forEach(feed -> feed.legs().forEach(leg -> catalog.add(leg.kind())));
			net.joins().forEach(join -> join.legs().forEach(leg -> catalog.add(leg.kind())));
		}
		boat.devices().forEach(device -> catalog.add(device.kind()));
		boat.sources().forEach(source -> {
			if (source instanceof DescribedBoat.Supply supply) {
				supply.fuse().ifPresent(catalog::fuse);
			}
		});
		StringBuilder text = new StringBuilder("catalog VaerlanParts \"Invented\" {\n");
		for (Collection<String> lines : List.of(catalog.families.values(), catalog.fuses.values(), catalog.parts.values())) {
			lines.forEach(line -> text.append('\t').append(line).append('\n'));
		}
		return text.append("}\n\n").toString();
	}

	/** The size of a conductor, without a declared resistance. */
	static String size(PartKind.Wire wire) {
		return wire.gauge() > 0 ? wire.gauge() + " AWG" : HullText.number(wire.area()) + " mm2";
	}

	private static String power(PartKind.Wire wire) {
		return "power " + size(wire) + wire.declared().map(ohms -> ", " + HullText.thousandths(ohms) + " mohm/m each way").orElse("");
	}

	private String end(PartKind.Family family, String gender) {
		families.computeIfAbsent(family.name(), name -> "family " + name + " { vendor"
				+ family.contact().map(ohms -> "; contact " + HullText.thousandths(ohms) + " mohm").orElse("") + " }");
		return family.name() + " " + gender;
	}

	private String fuse(PartKind.Fuse fuse) {
		fuse.kind().ifPresent(kind -> fuses.computeIfAbsent(kind.name(), name -> "fuse " + name + " { rated 3 A, 5 A, 10 A"
				+ kind.drop().map(volts -> "; drops " + HullText.thousandths(volts) + " mV").orElse("") + " }"));
		return HullText.fuse(fuse);
	}

	private String through(PartKind.Family family) {
		return end(family, "male") + ", " + end(family, "female");
	}

	private void add(PartKind part) {
		if (parts.containsKey(part.name())) {
			return;
		}
		List<String> says = new ArrayList<>();
		String word;
		if (part instanceof PartKind.Cable cable) {
			word = "cable";
			cable.family().ifPresent(family -> says.add("ends " + through(family)));
			cable.power().ifPresent(wire -> says.add(power(wire)));
		} else if (part instanceof PartKind.Terminator terminator) {
			word = "terminator";
			says.add(switch (terminator.place()) {
			case PINS -> "end " + end(terminator.family(), "male");
			case SOCKETS -> "end " + end(terminator.family(), "female");
			case IN_LINE -> "in line, " + end(terminator.family(), "male") + " to " + end(terminator.family(), "female");
			});
			says.add("120 ohm");
		} else if (part instanceof PartKind.Tee tee) {
			word = "tee";
			says.add("backbone " + through(tee.family()));
			says.add((tee.ports() == 1 ? "port 1 : " : "ports 1.." + tee.ports() + " : ") + end(tee.portFamily(), "female"));
		} else if (part instanceof PartKind.Tap tap) {
			word = "tap";
			says.add("backbone " + through(tap.family()));
			says.add(switch (tap.feeds()) {
			case BOTH -> "feeds both sides";
			case MALE_SIDE -> "feeds the male side";
			case FEMALE_SIDE -> "feeds the female side";
			});
			tap.fuseEachSide().ifPresent(fuse -> says.add("fuse each side " + fuse(fuse)));
			if (tap.breaksSupply()) {
				says.add("breaks supply");
			}
		} else if (part instanceof PartKind.Isolator isolator) {
			word = "isolator";
			says.add("backbone " + through(isolator.family()));
			if (isolator.breaksSupply()) {
				says.add("breaks supply");
			}
			if (isolator.joinsReturn()) {
				says.add("joins return");
			}
		} else if (part instanceof PartKind.FeedThrough wall) {
			word = "feedthrough";
			says.add(end(wall.family(), "male") + " to " + end(wall.family(), "female"));
		} else if (part instanceof PartKind.Adapter adapter) {
			word = "adapter";
			says.add(end(adapter.pins(), "male") + " to " + end(adapter.sockets(), "female"));
			adapter.length().ifPresent(length -> says.add("length " + HullText.number(length) + " m"));
			if (adapter.carriesPower()) {
				says.add("carries power");
			}
			adapter.power().ifPresent(wire -> says.add(power(wire)));
		} else if (part instanceof PartKind.Cord cord) {
			word = "cord";
			says.add(end(cord.family(), "male") + " to bare");
			says.add("length " + HullText.number(cord.length()) + " m");
			cord.power().ifPresent(wire -> says.add(power(wire)));
			cord.fuse().ifPresent(fuse -> says.add("fuse " + fuse(fuse)));
		} else {
			word = "device";
			device((PartKind.DeviceKind) part, says);
		}
		parts.put(part.name(), word + " " + part.name() + " { " + String.join("; ", says) + " }");
	}

	private void device(PartKind.DeviceKind device, List<String> says) {
		if (device.lead().isPresent()) {
			device.leadOf().ifPresent(this::add);
			says.add("lead " + HullText.number(device.lead().get()) + " m " + device.leadOf().map(cable -> "of " + cable.name() + ", ").orElse("") + end(device.ports().get(0).family(), "male"));
		} else {
			device.ports().forEach(port -> says.add("port " + port.name() + " : " + end(port.family(), genderOf(port))));
		}
		if (device.portsApart()) {
			says.add("isolated " + device.ports().get(0).name() + " from " + device.ports().get(1).name());
		}
		device.own().ifPresent(own -> says.add("own supply, " + (own.isolated() ? "isolated" : "not isolated") + ", draws " + HullText.number(own.draws()) + " A"));
		device.load().ifPresent(load -> says.add(load(load)));
	}

	/** A device that a backbone runs through comes in by pins and goes out by sockets; one that is dropped to has pins. */
	private static String genderOf(PartKind.DeviceKind.Port port) {
		return port.name().equals("leaving") ? "female" : "male";
	}

	private static String load(LoadData load) {
		return "load " + load.nominal() + (load.behaviourWritten() ? " " + load.behaviour().words : "")
				+ load.reference().map(volts -> " at " + HullText.number(volts) + " V").orElse("")
				+ load.most().map(most -> ", at most " + most).orElse("")
				+ load.start().map(start -> ", starts with " + start + " for 500 ms").orElse("");
	}
}
