/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.FittedDevice;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Pgn;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What reaches the ports of devices.
 */
final class Listening {

	private final Attachments attachments;
	private final Map<Carrier, Map<String, List<Stream>>> byMessage = new HashMap<>();

	Listening(Attachments attachments, StreamGraph graph) {
		this.attachments = attachments;
		for (Carrier carrier : attachments.carriers()) {
			Map<String, List<Stream>> messages = new HashMap<>();
			graph.on(carrier).forEach(each -> messages.computeIfAbsent(each.use.message().name(), none -> new ArrayList<>(2)).add(each));
			byMessage.put(carrier, messages);
		}
	}

	/** The streams by which a device hears what answers to a use, by a port or by any; not what it tells itself. */
	List<Stream> heard(FittedDevice device, MessageUse use, Optional<String> port) {
		List<Stream> heard = new ArrayList<>();
		for (Attachment each : attachments.of(device.name())) {
			if (each.hears() && each.isBy(port)) {
				for (Stream stream : byMessage.get(each.carrier()).getOrDefault(use.message().name(), List.of())) {
					if (use.covers(stream.use) && !stream.teller().equals(device.name()) && !heard.contains(stream)) {
						heard.add(stream);
					}
				}
			}
		}
		return heard;
	}

	/** The streams by which a device hears messages whose place the wanted one has taken. */
	List<Stream> obsolete(FittedDevice device, MessageUse use, Optional<String> port) {
		if (!(use.message() instanceof Pgn wanted)) {
			return List.of();
		}
		return attachments.of(device.name()).stream().filter(each -> each.hears() && each.isBy(port))
				.flatMap(each -> byMessage.get(each.carrier()).values().stream()).flatMap(List::stream)
				.filter(each -> each.use.message() instanceof Pgn told && told.successors().contains(wanted.number()) && !each.teller().equals(device.name()))
				.toList();
	}

	/** The streams that answer to a use, wherever they are told. */
	List<Stream> anywhere(MessageUse use) {
		return byMessage.values().stream().flatMap(messages -> messages.getOrDefault(use.message().name(), List.of()).stream())
				.filter(each -> use.covers(each.use)).toList();
	}
}
