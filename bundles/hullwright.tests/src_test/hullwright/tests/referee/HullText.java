/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes a described boat as a {@code .hull} text, with the catalog of its parts.
 */
final class HullText {

	/** The name of the series in the text. */
	static final String SERIES = "Vaerlan";

	private final StringBuilder text = new StringBuilder();
	private final DescribedBoat boat;

	private HullText(DescribedBoat boat) {
		this.boat = boat;
	}

	static String of(DescribedBoat boat) {
		HullText writer = new HullText(boat);
		writer.line("// SPDX-FileCopyrightText: Hullwright contributors");
		writer.line("// SPDX-License-Identifier: EPL-2.0");
		writer.line("// Invented, and written by a test: " + boat);
		writer.line("");
		writer.text.append(CatalogText.of(boat));
		writer.series();
		return writer.text.toString();
	}

	/** A number as a text writes it. */
	static String number(double value) {
		return plain(BigDecimal.valueOf(value));
	}

	/** A number in units of a thousandth. */
	static String thousandths(double value) {
		return plain(BigDecimal.valueOf(value).movePointRight(3));
	}

	private static String plain(BigDecimal value) {
		return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
	}

	private void line(String line) {
		text.append(line).append('\n');
	}

	private void series() {
		line("series " + SERIES + " \"Vaerlan, invented\" {");
		boat.sources().stream().filter(DescribedBoat.Supply.class::isInstance).flatMap(supply -> ((DescribedBoat.Supply) supply).switches().stream())
				.distinct().forEach(name -> line("\tswitch " + name));
		boat.sources().forEach(this::source);
		boat.states().forEach(this::state);
		boat.networks().forEach(this::network);
		List<String> onNetworks = onNetworks();
		boat.devices().stream().filter(device -> !onNetworks.contains(device.name())).forEach(device -> line("\tdevice " + device(device)));
		line("}");
	}

	/** The devices that a network declares where they hang. */
	private List<String> onNetworks() {
		List<String> names = new ArrayList<>();
		for (DescribedBoat.Net net : boat.networks()) {
			net.drops().stream().filter(drop -> drop.port().isEmpty()).forEach(drop -> names.add(drop.device()));
			net.backbone().forEach(item -> {
				if (item instanceof DescribedBoat.Fitted fitted) {
					names.add(fitted.name());
					fitted.device().ifPresent(names::add);
				}
			});
		}
		return names;
	}

	private void source(DescribedBoat.Source source) {
		List<String> says = new ArrayList<>();
		if (source instanceof DescribedBoat.Bank bank) {
			says.add(volts(bank.volts()));
			bank.resistance().ifPresent(ohms -> says.add("internal resistance " + thousandths(ohms) + " mohm"));
			line("\tbank " + source.name() + " { " + String.join("; ", says) + " }");
		} else if (source instanceof DescribedBoat.Converter converter) {
			converter.from().ifPresent(from -> says.add("from " + from));
			says.add(volts(converter.volts()));
			if (converter.isolated()) {
				says.add("isolated");
			}
			converter.efficiency().ifPresent(share -> says.add("efficiency " + number(Math.round(share * 100)) + " %"));
			line("\tconverter " + source.name() + " { " + String.join("; ", says) + " }");
		} else if (source instanceof DescribedBoat.Supply supply) {
			supply.from().ifPresent(from -> says.add("from " + from));
			supply.volts().ifPresent(volts -> says.add(volts(volts)));
			if (!supply.switches().isEmpty()) {
				says.add("switch " + String.join(" and ", supply.switches()));
			}
			supply.fuse().ifPresent(fuse -> says.add("fuse " + fuse(fuse)));
			supply.lead().ifPresent(lead -> says.add("lead " + lead(lead)));
			line("\tsupply " + source.name() + " { " + String.join("; ", says) + " }");
		}
	}

	static String fuse(PartKind.Fuse fuse) {
		return number(fuse.rating()) + " A" + fuse.kind().map(kind -> " of " + kind.name()).orElse("");
	}

	private static String lead(DescribedBoat.Lead lead) {
		return number(lead.length()) + " m each way of " + CatalogText.size(lead.wire());
	}

	private static String volts(DescribedBoat.Volts volts) {
		List<String> says = new ArrayList<>();
		volts.nominal().ifPresent(value -> says.add(number(value) + " V"));
		volts.lowest().ifPresent(value -> says.add("lowest " + number(value) + " V"));
		volts.highest().ifPresent(value -> says.add("highest " + number(value) + " V"));
		return String.join(", ", says);
	}

	private void state(DescribedBoat.State state) {
		List<String> says = new ArrayList<>();
		if (!state.on().isEmpty()) {
			says.add("on " + state.on().stream().sorted().collect(Collectors.joining(" and ")));
		}
		state.dippingBank().ifPresent(bank -> says.add(bank + " dips to " + number(state.dipsTo()) + " V for 2 s"));
		line("\tstate " + state.name() + " { " + String.join("; ", says) + " }");
	}

	private void network(DescribedBoat.Net net) {
		line("\tnetwork " + net.name() + " of kind instrument bus {");
		line("\t\tbackbone {");
		net.backbone().forEach(item -> line("\t\t\t" + inBackbone(item)));
		line("\t\t}");
		for (DescribedBoat.Drop drop : net.drops()) {
			line("\t\tdrop " + drop.from() + via(drop.legs()) + " to "
					+ drop.port().map(port -> drop.device() + "." + port).orElseGet(() -> device(boat.device(drop.device()))));
		}
		for (DescribedBoat.Feed feed : net.feeds()) {
			line("\t\tfeed " + feed.name() + " : " + feed.from() + via(feed.legs()) + " from " + String.join(", ", feed.supplies()));
		}
		for (DescribedBoat.Join join : net.joins()) {
			line("\t\tjoin " + join.from() + via(join.legs()) + " to " + join.to());
		}
		line("\t}");
	}

	private String inBackbone(DescribedBoat.Item item) {
		if (item instanceof DescribedBoat.Run run) {
			return "cable " + run.name() + " " + number(run.length()) + " m of " + run.kind().name();
		}
		DescribedBoat.Fitted fitted = (DescribedBoat.Fitted) item;
		if (fitted.kind() instanceof PartKind.DeviceKind) {
			return "device " + device(boat.device(fitted.name()));
		}
		String from = fitted.from().isEmpty() ? "" : " from " + String.join(", ", fitted.from());
		String behind = fitted.device().map(name -> " to " + device(boat.device(name))).orElse("");
		return word(fitted.kind()) + " " + fitted.name() + " : " + fitted.kind().name() + from + behind;
	}

	private static String word(PartKind kind) {
		if (kind instanceof PartKind.Terminator) {
			return "terminator";
		} else if (kind instanceof PartKind.Tee) {
			return "tee";
		} else if (kind instanceof PartKind.Tap) {
			return "tap";
		} else if (kind instanceof PartKind.Isolator) {
			return "isolator";
		} else if (kind instanceof PartKind.FeedThrough) {
			return "wall";
		} else if (kind instanceof PartKind.Adapter) {
			return "adapter";
		}
		throw new IllegalArgumentException("nothing that lies in a backbone: " + kind);
	}

	private static String via(List<DescribedBoat.Item> legs) {
		return legs.isEmpty() ? "" : legs.stream().map(HullText::leg).collect(Collectors.joining(", ", " via ", ""));
	}

	private static String leg(DescribedBoat.Item item) {
		if (item instanceof DescribedBoat.Run run) {
			return number(run.length()) + " m of " + run.kind().name();
		}
		DescribedBoat.Fitted fitted = (DescribedBoat.Fitted) item;
		return fitted.kind() instanceof PartKind.Tee ? fitted.name() + " : " + fitted.kind().name() : fitted.kind().name();
	}

	private static String device(DescribedBoat.Device device) {
		String from = device.ownFeeds().stream().map(feed -> "from " + feed.supply() + feed.lead().map(lead -> " lead " + lead(lead)).orElse(""))
				.collect(Collectors.joining("; "));
		return device.name() + " : " + device.kind().name() + (from.isEmpty() ? "" : " { " + from + " }");
	}
}
