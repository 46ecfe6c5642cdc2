/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.FittedDevice;
import hullwright.network.data.MessageUse;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The ways by which a stream comes from its sources: from each the shortest, and then others as far as that is worth it. On a way
 * nothing is told twice on one carrier.
 */
final class DataPaths {

	/** Ways of one datum beyond this number are left out. */
	static final int MOST = 64;

	/** Steps after which no more ways are looked for: many networks with bridges each to each have more ways than anybody can count. */
	private static final int MOST_STEPS = 4000;

	private record Told(Carrier carrier, MessageUse use) {
	}

	private final StreamTimings timings;
	private final StreamDelays delays;

	DataPaths(StreamTimings timings, StreamDelays delays) {
		this.timings = timings;
		this.delays = delays;
	}

	/**
	 * The ways of a stream that arrives.
	 *
	 * @param paths the ways, the shortest from each source first
	 * @param complete whether these are all
	 */
	record Found(List<DataPath> paths, boolean complete) {
	}

	/** The ways of a stream to a device that hears it. */
	Found to(Stream arriving, FittedDevice device) {
		Set<List<Stream>> ways = new LinkedHashSet<>();
		shortest(arriving, ways);
		Search search = new Search(ways);
		search.walk(arriving);
		return new Found(ways.stream().map(way -> path(way, device)).toList(), search.steps <= MOST_STEPS && ways.size() <= MOST);
	}

	/** One way from each source; a source behind which the only such way is an echo has none. */
	private static void shortest(Stream arriving, Set<List<Stream>> ways) {
		Map<Stream, Stream> towards = new HashMap<>();
		towards.put(arriving, arriving);
		Deque<Stream> open = new ArrayDeque<>(List.of(arriving));
		while (!open.isEmpty() && ways.size() <= MOST) {
			Stream next = open.remove();
			if (next.how == ToldMessage.How.SENT) {
				List<Stream> way = new ArrayList<>();
				Set<Told> told = new HashSet<>();
				boolean once = true;
				for (Stream each = next; way.isEmpty() || way.get(way.size() - 1) != arriving; each = towards.get(each)) {
					once &= told.add(new Told(each.carrier(), each.use));
					way.add(each);
				}
				if (once) {
					ways.add(way);
				}
			}
			next.inputs.forEach(alternatives -> alternatives.forEach(each -> {
				if (towards.putIfAbsent(each, next) == null) {
					open.add(each);
				}
			}));
		}
	}

	/** Walks back from where a stream arrives, one step after the other. */
	private static final class Search {

		private final Set<List<Stream>> ways;
		private final List<Stream> behind = new ArrayList<>();
		private final Set<Told> told = new HashSet<>();
		private int steps;

		private Search(Set<List<Stream>> ways) {
			this.ways = ways;
		}

		private void walk(Stream stream) {
			Told here = new Told(stream.carrier(), stream.use);
			if (ways.size() > MOST || ++steps > MOST_STEPS || !told.add(here)) {
				return;
			}
			behind.add(stream);
			if (stream.how == ToldMessage.How.SENT) {
				List<Stream> way = new ArrayList<>(behind);
				Collections.reverse(way);
				ways.add(way);
			}
			stream.inputs.forEach(alternatives -> alternatives.forEach(this::walk));
			behind.remove(behind.size() - 1);
			told.remove(here);
		}
	}

	private DataPath path(List<Stream> way, FittedDevice device) {
		StreamDelays.Delay delay = delays.along(way, device);
		Stream first = way.get(0);
		return new DataPath(new DataSource(first.teller(), first.use, first.instance),
				way.stream().map(each -> new DataPath.Leg(each.carrier(), each.teller(), each.how, each.use)).toList(),
				timings.along(way), delay.known(), delay.unknown());
	}
}
