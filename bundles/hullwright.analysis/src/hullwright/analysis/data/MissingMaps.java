/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.Boat;
import hullwright.network.FittedDevice;
import hullwright.network.SerialLine;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Pgn;
import hullwright.network.data.Sending;
import hullwright.network.data.Sentence;
import hullwright.network.data.Turning;
import hullwright.network.data.Wanting;
import hullwright.network.part.DeviceModel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds gateways that hear the data which somebody lacks, but have no map for them in this direction. That a sentence and a parameter
 * group stand for the same data is read from the maps of all gateways on board and on offer, in whichever direction they have them.
 */
final class MissingMaps {

	/** The same data in two forms. */
	private record Likeness(MessageUse one, MessageUse other) {
	}

	/** A way by which data would come if a gateway had a map. */
	record Gap(MissingMap map, List<Stream> heard) {
	}

	private final Boat boat;
	private final Attachments attachments;
	private final Listening listening;
	private Map<String, Set<Likeness>> likeness;

	MissingMaps(Boat boat, Attachments attachments, Listening listening) {
		this.boat = boat;
		this.attachments = attachments;
		this.listening = listening;
	}

	/** Why a device lacks what nobody tells in the words that it understands. */
	Optional<Gap> of(FittedDevice device, Wanting wanting) {
		for (MessageUse use : wanting.uses()) {
			for (MessageUse like : like(use)) {
				for (Attachment ear : attachments.of(device.name())) {
					if (ear.hears() && ear.isBy(wanting.port())) {
						Optional<Gap> gap = attachments.on(ear.carrier()).stream().map(gateway -> gap(gateway, like, use, device)).flatMap(Optional::stream).findFirst();
						if (gap.isPresent()) {
							return gap;
						}
					}
				}
			}
		}
		return Optional.empty();
	}

	private Optional<Gap> gap(Attachment out, MessageUse like, MessageUse asked, FittedDevice device) {
		FittedDevice gateway = out.device();
		if (!out.tells() || gateway.name().equals(device.name()) || gateway.settings().turns().isEmpty()
				|| gateway.settings().turns().stream().anyMatch(each -> makes(each, like, asked))) {
			return Optional.empty();
		}
		List<Stream> heard = listening.heard(gateway, like, Optional.empty()).stream().filter(each -> !each.carrier().equals(out.carrier())).toList();
		return heard.isEmpty() ? Optional.empty()
				: Optional.of(new Gap(new MissingMap(gateway.name(), Optional.of(heard.get(0).use), asked, out.carrier(), Optional.of(device.name())), heard));
	}

	private static boolean makes(Turning turning, MessageUse from, MessageUse to) {
		return turning.from().stream().anyMatch(each -> each.covers(from)) && turning.to().stream().anyMatch(to::covers);
	}

	/** In what other words the data of a message are told. */
	private List<MessageUse> like(MessageUse use) {
		if (likeness == null) {
			likeness = new HashMap<>();
			attachments.devices().forEach(each -> each.settings().turns().forEach(this::read));
			boat.partsOnOffer().of(DeviceModel.class).forEach(each -> each.data().turns().forEach(this::read));
		}
		return likeness.getOrDefault(use.message().name(), Set.of()).stream().filter(each -> use.covers(each.one)).map(Likeness::other).distinct().toList();
	}

	/** What is made of one message alone says the same; what is made of several says something of each. */
	private void read(Turning turning) {
		for (MessageUse from : turning.from()) {
			for (MessageUse to : turning.to()) {
				if (from.message() instanceof Pgn != to.message() instanceof Pgn) {
					put(from, to);
					if (turning.from().size() == 1) {
						put(to, from);
					}
				}
			}
		}
	}

	private void put(MessageUse one, MessageUse other) {
		likeness.computeIfAbsent(one.message().name(), none -> new LinkedHashSet<>()).add(new Likeness(one, other));
	}

	/** Sentences that the text of a line has a gateway tell which has maps to sentences, but none that makes them. */
	List<MissingMap> onLines(StreamGraph graph) {
		List<MissingMap> missing = new ArrayList<>();
		for (SerialLine line : boat.serialLines()) {
			Carrier carrier = new Carrier(Carrier.Kind.SERIAL_LINE, line.name());
			for (Attachment talker : attachments.on(carrier)) {
				if (talker.tells() && isGateway(talker.device())) {
					line.carries().stream().map(Sending::use).filter(use -> isMadeUp(use, talker.device(), graph.on(carrier)))
							.forEach(use -> missing.add(new MissingMap(talker.device().name(), Optional.empty(), use, carrier, Optional.empty())));
				}
			}
		}
		return missing;
	}

	private static boolean isGateway(FittedDevice device) {
		return device.settings().passes().isEmpty()
				&& device.settings().turns().stream().flatMap(each -> each.to().stream()).anyMatch(each -> each.message() instanceof Sentence);
	}

	private static boolean isMadeUp(MessageUse use, FittedDevice talker, List<Stream> onLine) {
		return talker.sends().stream().noneMatch(each -> use.covers(each.use()))
				&& talker.settings().turns().stream().flatMap(each -> each.to().stream()).noneMatch(use::covers)
				&& onLine.stream().anyMatch(each -> each.how == ToldMessage.How.SENT && each.teller().equals(talker.name()) && use.covers(each.use));
	}
}
