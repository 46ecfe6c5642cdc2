/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Finds what goes round in circles: streams of which each comes from each other (strongly connected components, by Tarjan's
 * algorithm of 1972, written with a stack of its own so that no chain is too long for it).
 */
final class Loops {

	private record Round(Set<String> devices, Set<Carrier> carriers) {
	}

	/** A stream whose outputs are being looked at. */
	private static final class Visit {

		private final Stream stream;
		private final int number;
		private int lowest;
		private int next;

		private Visit(Stream stream, int number) {
			this.stream = stream;
			this.number = number;
			this.lowest = number;
		}
	}

	private final List<List<Stream>> circles = new ArrayList<>();
	private final Set<Stream> behind = new LinkedHashSet<>();
	private final Map<Stream, Visit> visits = new HashMap<>();
	private final Deque<Stream> pending = new ArrayDeque<>();
	private final Set<Stream> isPending = new LinkedHashSet<>();

	Loops(StreamGraph graph) {
		for (Stream each : graph.all()) {
			// nothing leads back to what a device tells of its own
			if (each.how != ToldMessage.How.SENT && !visits.containsKey(each)) {
				search(each);
			}
		}
		Deque<Stream> open = new ArrayDeque<>(behind);
		while (!open.isEmpty()) {
			open.remove().outputs.stream().filter(behind::add).forEach(open::add);
		}
	}

	private void search(Stream first) {
		Deque<Visit> open = new ArrayDeque<>();
		open.push(visit(first));
		while (!open.isEmpty()) {
			Visit visit = open.peek();
			if (visit.next < visit.stream.outputs.size()) {
				Stream output = visit.stream.outputs.get(visit.next++);
				if (!visits.containsKey(output)) {
					open.push(visit(output));
				} else if (isPending.contains(output)) {
					visit.lowest = Math.min(visit.lowest, visits.get(output).number);
				}
				continue;
			}
			open.pop();
			if (!open.isEmpty()) {
				open.peek().lowest = Math.min(open.peek().lowest, visit.lowest);
			}
			if (visit.lowest == visit.number) {
				close(visit.stream);
			}
		}
	}

	private Visit visit(Stream stream) {
		Visit visit = new Visit(stream, visits.size());
		visits.put(stream, visit);
		pending.push(stream);
		isPending.add(stream);
		return visit;
	}

	private void close(Stream first) {
		List<Stream> together = new ArrayList<>();
		Stream last;
		do {
			last = pending.pop();
			isPending.remove(last);
			together.add(last);
		} while (last != first);
		if (together.size() > 1) {
			circles.add(together);
			behind.addAll(together);
		}
	}

	/** Whether a stream is in a circle or comes out of one. */
	boolean leadTo(Stream stream) {
		return behind.contains(stream);
	}

	/** The loops, each once with all that goes round in it. */
	List<EchoLoop> all() {
		Map<Round, Set<MessageUse>> rounds = new LinkedHashMap<>();
		for (List<Stream> circle : circles) {
			Set<String> devices = new TreeSet<>();
			Set<Carrier> carriers = new LinkedHashSet<>();
			Set<MessageUse> uses = new LinkedHashSet<>();
			circle.forEach(one -> {
				devices.add(one.teller());
				carriers.add(one.carrier());
				uses.add(one.use);
			});
			rounds.computeIfAbsent(new Round(devices, carriers), none -> new LinkedHashSet<>()).addAll(uses);
		}
		return rounds.entrySet().stream()
				.map(each -> new EchoLoop(List.copyOf(each.getKey().devices), List.copyOf(each.getKey().carriers), List.copyOf(each.getValue()))).toList();
	}
}
