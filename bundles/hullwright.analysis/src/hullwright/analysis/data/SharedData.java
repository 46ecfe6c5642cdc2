/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import hullwright.network.data.Pgn;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Finds messages on one carrier that come from several devices, and data that come twice from one.
 */
final class SharedData {

	/** Messages that nothing tells apart. */
	private record Alike(MessageUse use, Optional<Integer> instance) {
	}

	private record Doubling(Carrier carrier, Set<String> tellers) {
	}

	private final StreamTimings timings;
	private final List<SeveralSources> several = new ArrayList<>();
	private final Map<Doubling, Set<MessageUse>> doubled = new LinkedHashMap<>();

	/**
	 * Looks at all carriers.
	 *
	 * @param listenedTo whether somebody wants, shows or turns a message that is told there
	 */
	SharedData(Attachments attachments, StreamGraph graph, StreamTimings timings, StreamSources sources, Loops loops, Predicate<Stream> listenedTo) {
		this.timings = timings;
		for (Carrier carrier : attachments.carriers()) {
			Map<Alike, List<Stream>> alike = new LinkedHashMap<>();
			graph.on(carrier).forEach(each -> alike.computeIfAbsent(new Alike(each.use, each.instance), none -> new ArrayList<>(2)).add(each));
			alike.forEach((what, streams) -> {
				if (streams.size() > 1) {
					look(carrier, what, streams, sources, loops, listenedTo);
				}
			});
		}
	}

	private void look(Carrier carrier, Alike what, List<Stream> streams, StreamSources sources, Loops loops, Predicate<Stream> listenedTo) {
		Map<String, Set<String>> tellersBySource = new LinkedHashMap<>();
		for (Stream each : streams) {
			if (!loops.leadTo(each)) {
				sources.of(each).forEach(source -> tellersBySource.computeIfAbsent(source.device(), none -> new LinkedHashSet<>()).add(each.teller()));
			}
		}
		tellersBySource.values().stream().filter(tellers -> tellers.size() > 1)
				.forEach(tellers -> doubled.computeIfAbsent(new Doubling(carrier, tellers), none -> new LinkedHashSet<>()).add(what.use));
		if (what.use.message() instanceof Pgn pgn && !streams.stream().allMatch(each -> reports(each, pgn))) {
			return;
		}
		boolean sameKey = what.use.message() instanceof Pgn pgn && isWholeKey(pgn, what);
		if (carrier.kind() == Carrier.Kind.NETWORK && tellersBySource.size() > 1 && (sameKey || streams.stream().anyMatch(listenedTo))) {
			several.add(new SeveralSources(carrier.name(), what.use, what.instance, List.copyOf(tellersBySource.keySet()), sameKey));
		}
	}

	/** Whether a key is told in full: where another number is part of it, that may tell sources apart though no text states it. */
	private static boolean isWholeKey(Pgn pgn, Alike what) {
		return pgn.instance() && what.instance.isPresent()
				&& pgn.keys().stream().allMatch(key -> what.use.value().filter(value -> value.field().equals(key.name())).isPresent());
	}

	/**
	 * Whether a message reports something of its sender's own. Commands and answers do not: they name what they are meant for, and
	 * any number of devices may tell them. Such is what is addressed to one device, and what is told on events only though the list
	 * of messages gives it no time and instances tell apart what it is meant for, as the command to a switch bank.
	 */
	private boolean reports(Stream stream, Pgn pgn) {
		return !pgn.isAddressed() && (!pgn.instance() || pgn.timing().isStated() || timings.of(stream).every().isPresent());
	}

	List<SeveralSources> several() {
		return several;
	}

	List<DoubledData> doubled() {
		return doubled.entrySet().stream()
				.map(each -> new DoubledData(each.getKey().carrier, List.copyOf(each.getKey().tellers), List.copyOf(each.getValue()))).toList();
	}
}
