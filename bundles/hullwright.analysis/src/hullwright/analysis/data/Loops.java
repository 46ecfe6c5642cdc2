/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Finds what goes round in circles: streams are struck off from which nothing comes or that come from nothing, until only circles,
 * and what lies between two of them, are left.
 */
final class Loops {

	private record Round(Set<String> devices, Set<Carrier> carriers) {
	}

	private final Set<Stream> inCircles = new LinkedHashSet<>();

	Loops(StreamGraph graph) {
		Map<Stream, Integer> in = new HashMap<>();
		Map<Stream, Integer> out = new HashMap<>();
		graph.all().forEach(each -> {
			inCircles.add(each);
			in.put(each, each.inputs.stream().mapToInt(List::size).sum());
			out.put(each, each.outputs.size());
		});
		Deque<Stream> open = new ArrayDeque<>(inCircles.stream().filter(each -> in.get(each) == 0 || out.get(each) == 0).toList());
		while (!open.isEmpty()) {
			Stream struck = open.remove();
			if (inCircles.remove(struck)) {
				struck.outputs.stream().filter(each -> in.merge(each, -1, Integer::sum) == 0).forEach(open::add);
				struck.inputs.forEach(alternatives -> alternatives.stream().filter(each -> out.merge(each, -1, Integer::sum) == 0).forEach(open::add));
			}
		}
	}

	boolean has(Stream stream) {
		return inCircles.contains(stream);
	}

	/** The loops, each once with all that goes round in it. */
	List<EchoLoop> all() {
		Map<Round, Set<MessageUse>> rounds = new LinkedHashMap<>();
		Set<Stream> seen = new LinkedHashSet<>();
		for (Stream each : inCircles) {
			if (!seen.contains(each)) {
				Set<Stream> together = together(each);
				seen.addAll(together);
				Set<String> devices = new TreeSet<>();
				Set<Carrier> carriers = new LinkedHashSet<>();
				Set<MessageUse> uses = new LinkedHashSet<>();
				together.forEach(one -> {
					devices.add(one.teller());
					carriers.add(one.carrier());
					uses.add(one.use);
				});
				rounds.computeIfAbsent(new Round(devices, carriers), none -> new LinkedHashSet<>()).addAll(uses);
			}
		}
		return rounds.entrySet().stream()
				.map(each -> new EchoLoop(List.copyOf(each.getKey().devices), List.copyOf(each.getKey().carriers), List.copyOf(each.getValue()))).toList();
	}

	private Set<Stream> together(Stream first) {
		Set<Stream> together = new LinkedHashSet<>(Set.of(first));
		Deque<Stream> open = new ArrayDeque<>(together);
		while (!open.isEmpty()) {
			Stream next = open.remove();
			next.outputs.stream().filter(inCircles::contains).filter(together::add).forEach(open::add);
			next.inputs.forEach(alternatives -> alternatives.stream().filter(inCircles::contains).filter(together::add).forEach(open::add));
		}
		return together;
	}
}
