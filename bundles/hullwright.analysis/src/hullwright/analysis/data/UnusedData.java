/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.FittedDevice;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Pgn;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds what devices tell and nobody wants, shows, or makes something of that somebody wants or shows. What is addressed to one
 * device is a command or an answer and is not among it: such as what a control head tells its autopilot.
 */
final class UnusedData {

	private UnusedData() {
	}

	static List<DataSource> of(Attachments attachments, StreamGraph graph, Listening listening) {
		Set<Stream> used = new LinkedHashSet<>();
		Deque<Stream> open = new ArrayDeque<>();
		for (FittedDevice device : attachments.devices()) {
			device.model().data().wants().forEach(each -> listen(device, each.uses(), each.port(), listening, used, open));
			device.model().data().shows().forEach(each -> listen(device, each.uses(), each.port(), listening, used, open));
		}
		while (!open.isEmpty()) {
			open.remove().inputs.forEach(alternatives -> alternatives.forEach(each -> {
				if (used.add(each)) {
					open.add(each);
				}
			}));
		}
		Map<DataSource, Boolean> sources = new LinkedHashMap<>();
		for (Stream each : graph.all()) {
			if (each.how == ToldMessage.How.SENT && !(each.use.message() instanceof Pgn pgn && pgn.isAddressed())) {
				sources.merge(new DataSource(each.teller(), each.use, each.instance), used.contains(each), Boolean::logicalOr);
			}
		}
		return sources.entrySet().stream().filter(each -> !each.getValue()).map(Map.Entry::getKey).toList();
	}

	private static void listen(FittedDevice device, List<MessageUse> uses, Optional<String> port, Listening listening, Set<Stream> used, Deque<Stream> open) {
		for (MessageUse use : uses) {
			for (Stream each : listening.heard(device, use, port)) {
				if (used.add(each)) {
					open.add(each);
				}
			}
		}
	}
}
