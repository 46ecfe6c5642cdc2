/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.Timing;
import hullwright.quantity.Duration;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How often streams are told. A bridge passes on as often as it hears. A gateway that needs several messages waits for the slowest
 * of them, and not more often than it is limited to. Where one of several can stand for a message, either may be the one: the most
 * often counts for what a carrier bears, the least often for what a listener can rely on.
 */
final class StreamTimings {

	private final StreamGraph graph;
	private final Map<Stream, Timing> mostOften = new HashMap<>();
	private final Map<Stream, Timing> leastOften = new HashMap<>();

	StreamTimings(StreamGraph graph) {
		this.graph = graph;
	}

	Timing mostOften(Stream stream) {
		return of(stream, false, mostOften, new HashSet<>());
	}

	Timing leastOften(Stream stream) {
		return of(stream, true, leastOften, new HashSet<>());
	}

	private Timing of(Stream stream, boolean least, Map<Stream, Timing> known, Set<Stream> asked) {
		if (stream.how == ToldMessage.How.SENT) {
			return graph.ownTiming(stream);
		}
		Timing found = known.get(stream);
		if (found == null) {
			if (!asked.add(stream)) {
				return null;
			}
			Timing slowest = null;
			for (List<Stream> alternatives : stream.inputs) {
				Timing one = null;
				for (Stream each : alternatives) {
					Timing timing = of(each, least, known, asked);
					one = one == null ? timing : timing == null ? one : least == isSlower(timing, one) ? timing : one;
				}
				slowest = slowest == null || one != null && isSlower(one, slowest) ? one : slowest;
			}
			found = limited(slowest == null ? Timing.UNSTATED : slowest, stream.turning.flatMap(turning -> turning.atMostEvery()));
			known.put(stream, found);
		}
		return found;
	}

	/** Whether one is told less often than the other: what nobody says least of all, then events. */
	private static boolean isSlower(Timing one, Timing other) {
		return slowness(one) > slowness(other);
	}

	private static double slowness(Timing timing) {
		return timing.every().map(Duration::seconds).orElse(timing.onEvent() ? Double.MAX_VALUE : Double.POSITIVE_INFINITY);
	}

	private static Timing limited(Timing timing, Optional<Duration> pause) {
		if (pause.isEmpty()) {
			return timing;
		} else if (timing.every().isPresent()) {
			return timing.every().get().seconds() >= pause.get().seconds() ? timing : Timing.every(pause.get());
		}
		boolean further = timing.apart().map(apart -> apart.seconds() >= pause.get().seconds()).orElse(false);
		return timing.onEvent() && !further ? new Timing(Optional.empty(), true, pause) : timing;
	}
}
