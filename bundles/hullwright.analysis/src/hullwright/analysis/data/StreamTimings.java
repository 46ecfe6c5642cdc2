/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.Timing;
import hullwright.quantity.Duration;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * How often streams are told. A bridge passes on as often as it hears. A gateway that needs several messages waits for the slowest
 * of them, and tells not more often than it is limited to. Where one of several can stand for a message, the one that comes most
 * often counts, since that is what a carrier has to bear.
 *
 * <p>Timings settle step by step, each only ever towards more often, so that circles come to an end and no order of devices
 * matters.
 */
final class StreamTimings {

	/** What is told least often last: what nobody says anything of after events, and events after what is regular. */
	private static final Comparator<Timing> SLOWER = Comparator
			.<Timing>comparingInt(timing -> timing.every().isPresent() ? 0 : timing.onEvent() ? 1 : 2)
			.thenComparingDouble(timing -> timing.every().or(timing::apart).map(Duration::seconds).orElse(0.0));

	private final StreamGraph graph;
	private final Map<Stream, Timing> settled = new HashMap<>();

	StreamTimings(StreamGraph graph) {
		this.graph = graph;
		Set<Stream> waiting = new LinkedHashSet<>();
		graph.all().forEach(waiting::add);
		Deque<Stream> open = new ArrayDeque<>(waiting);
		while (!open.isEmpty()) {
			Stream next = open.remove();
			waiting.remove(next);
			Optional<Timing> now = next.how == ToldMessage.How.SENT ? Optional.of(graph.ownTiming(next)) : fromInputs(next);
			Timing before = settled.get(next);
			if (now.isPresent() && (before == null || SLOWER.compare(now.get(), before) < 0)) {
				settled.put(next, now.get());
				next.outputs.stream().filter(waiting::add).forEach(open::add);
			}
		}
	}

	/** How often a stream is told. */
	Timing of(Stream stream) {
		return settled.getOrDefault(stream, Timing.UNSTATED);
	}

	/** How often what comes this way arrives, from the source on; what else a gateway needs comes as often as it can. */
	Timing along(List<Stream> way) {
		Timing timing = graph.ownTiming(way.get(0));
		for (int i = 1; i < way.size(); i++) {
			timing = limited(slowerOf(timing, besides(way.get(i), way.get(i - 1))), way.get(i).turning.flatMap(turning -> turning.atMostEvery()));
		}
		return timing;
	}

	/** How often the slowest comes of what a gateway needs besides one of its inputs; nothing if it needs nothing else. */
	Optional<Timing> besides(Stream made, Stream input) {
		return made.inputs.stream().filter(alternatives -> !alternatives.contains(input)).map(this::mostOften).flatMap(Optional::stream).max(SLOWER);
	}

	private Optional<Timing> fromInputs(Stream stream) {
		Timing slowest = null;
		for (List<Stream> alternatives : stream.inputs) {
			Optional<Timing> one = mostOften(alternatives);
			if (one.isEmpty()) {
				return Optional.empty();
			}
			slowest = slowest == null || SLOWER.compare(one.get(), slowest) > 0 ? one.get() : slowest;
		}
		return Optional.ofNullable(slowest).map(timing -> limited(timing, stream.turning.flatMap(turning -> turning.atMostEvery())));
	}

	/** How often that comes which comes most often. */
	Optional<Timing> mostOften(List<Stream> alternatives) {
		return alternatives.stream().map(settled::get).filter(Objects::nonNull).min(SLOWER);
	}

	private static Timing slowerOf(Timing one, Optional<Timing> other) {
		return other.isPresent() && SLOWER.compare(other.get(), one) > 0 ? other.get() : one;
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
