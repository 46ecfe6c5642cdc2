/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.catalog;

import hullwright.network.data.Message;
import hullwright.network.data.MessageUse;
import hullwright.network.part.Adapter;
import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.network.part.Cord;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.FeedThrough;
import hullwright.network.part.Fuse;
import hullwright.network.part.FuseKind;
import hullwright.network.part.Isolator;
import hullwright.network.part.Part;
import hullwright.network.part.Tap;
import hullwright.network.part.Tee;
import hullwright.network.part.Terminator;
import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What matters about a part of its kind, in a few words each.
 */
final class PartFacts {

	private PartFacts() {
	}

	/** What it draws, or what it may carry. */
	static String load(Part part) {
		List<String> words = new ArrayList<>();
		if (part instanceof DeviceModel device) {
			device.power().load().ifPresent(load -> words.add(draws(load.nominal())));
			device.power().ownSupply().ifPresent(own -> words.add("own supply" + own.draws().map(draws -> " " + draws).orElse("")));
		} else if (part instanceof Cable cable) {
			cable.rated().ifPresent(rated -> words.add(rated.toString()));
			cable.power().ifPresent(power -> words.add(power.size().toString()));
		} else if (part instanceof Tap tap) {
			words.add(tap.onlySide().map(side -> "feeds the " + side.name().toLowerCase(Locale.ROOT) + " side").orElse("feeds both sides"));
			words.add(tap.fuseEachSide().map(fuse -> "fuse " + rating(fuse)).orElse("no fuse"));
		} else if (part instanceof Cord cord) {
			words.add(cord.fuse().map(fuse -> "fuse " + rating(fuse)).orElse("no fuse"));
			cord.rated().ifPresent(rated -> words.add(rated.toString()));
		} else if (part instanceof Adapter adapter) {
			words.add(adapter.carriesPower() ? "carries power" : "no supply");
			adapter.rated().ifPresent(rated -> words.add(rated.toString()));
		} else if (part instanceof FuseKind fuse) {
			words.add(fuse.ratings().stream().map(Object::toString).collect(Collectors.joining(", ")));
		} else if (part instanceof Terminator terminator) {
			terminator.resistance().ifPresent(resistance -> words.add(resistance.toString()));
		} else if (part instanceof Isolator isolator) {
			words.add(isolator.joinsReturn() ? "breaks supply, joins return" : "breaks supply and return");
		}
		return String.join(", ", words);
	}

	/** What a device draws; a current in load equivalents, too. */
	private static String draws(Quantity nominal) {
		return nominal instanceof Current current ? "%d LEN (%s)".formatted(current.loadEquivalencyNumber(), current) : nominal.toString();
	}

	private static String rating(Fuse fuse) {
		return fuse.rating().toString();
	}

	/** How long it comes, how far it reaches, between which voltages it works, or how many ports it has. */
	static String range(Part part) {
		if (part instanceof DeviceModel device) {
			String voltages = device.power().lowest().flatMap(low -> device.power().highest().map(high -> low + " .. " + high)).orElse("");
			String lead = device.lead().map(each -> "lead " + each.length()).orElse("");
			return voltages + (voltages.isEmpty() || lead.isEmpty() ? "" : ", ") + lead;
		} else if (part instanceof Cable cable) {
			List<Length> stock = cable.stock();
			String lengths = stock.isEmpty() ? "" : stock.size() == 1 ? stock.get(0).toString() : stock.get(0) + " .. " + stock.get(stock.size() - 1);
			String most = cable.longestBackbone().map(length -> "backbone up to " + length).orElse("");
			return lengths + (lengths.isEmpty() || most.isEmpty() ? "" : ", ") + most;
		} else if (part instanceof Tee tee) {
			return tee.ports().size() == 1 ? "1 port" : tee.ports().size() + " ports";
		} else if (part instanceof Cord cord) {
			return cord.length().map(Object::toString).orElse("");
		} else if (part instanceof FeedThrough wall) {
			return wall.watertight() ? "watertight" : "not watertight";
		} else if (part instanceof Adapter adapter) {
			return adapter.length().map(Object::toString).orElse("");
		} else if (part instanceof Terminator terminator) {
			return terminator.inLine() ? "in line" : "";
		}
		return "";
	}

	/** Its connectors, and those of its ports. */
	static String connectors(Part part) {
		Optional<Connector> first = part.ends().first();
		Optional<Connector> second = part.ends().second();
		String ends = first.map(Connector::toString).orElse("") + second.map(each -> (first.isEmpty() ? "" : " \u2013 ") + each).orElse("");
		if (part instanceof Tee tee) {
			String ports = tee.ports().values().stream().flatMap(Optional::stream).map(Connector::toString).distinct().collect(Collectors.joining(", "));
			return ports.isEmpty() ? ends : ends + "; ports " + ports;
		}
		return ends;
	}

	/** What a device tells, and what it shows or needs, each message with its title. */
	static String data(Part part) {
		if (!(part instanceof DeviceModel device)) {
			return "";
		}
		String sends = said(device.data().sends().stream().map(each -> each.use().message()));
		String shows = said(device.data().shows().stream().flatMap(each -> each.uses().stream()).map(MessageUse::message));
		String wants = said(device.data().wants().stream().flatMap(each -> each.uses().stream()).map(MessageUse::message));
		return Stream.of(sends.isEmpty() ? "" : "sends " + sends, wants.isEmpty() ? "" : "wants " + wants, shows.isEmpty() ? "" : "shows " + shows)
				.filter(each -> !each.isEmpty()).collect(Collectors.joining("; "));
	}

	private static String said(Stream<Message> messages) {
		return messages.distinct().map(message -> (message.name() + " " + message.title()).strip()).collect(Collectors.joining(", "));
	}

	/** The zones that it is made for. */
	static String zones(Part part) {
		return part.identity().suitability().zones().stream().sorted().map(zone -> zone.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(", "));
	}
}
