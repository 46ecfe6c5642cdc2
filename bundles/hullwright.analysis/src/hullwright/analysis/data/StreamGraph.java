/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.Boat;
import hullwright.network.FittedDevice;
import hullwright.network.SerialLine;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Passing;
import hullwright.network.data.Pgn;
import hullwright.network.data.SentMessage;
import hullwright.network.data.Sending;
import hullwright.network.data.Sentence;
import hullwright.network.data.Timing;
import hullwright.network.data.Turning;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Follows what devices tell over all carriers until nothing new comes of it. A stream is followed once for each origin, teller and
 * carrier, so that what goes round in a circle ends.
 */
final class StreamGraph {

	/** What makes a stream this one and no other. */
	private record Key(Attachment at, MessageUse use, Optional<Integer> instance, Object origin) {
	}

	/** What a gateway makes by one rule of messages with one data instance. */
	private record Making(String device, int rule, Optional<Integer> instance) {
	}

	private final Attachments attachments;
	private final Map<Carrier, SerialLine> lines = new HashMap<>();
	private final Map<Stream, Timing> ownTiming = new HashMap<>();
	private final Map<Key, Stream> streams = new LinkedHashMap<>();
	private final Map<Carrier, List<Stream>> byCarrier = new LinkedHashMap<>();
	private final Map<Making, List<Stream>> made = new HashMap<>();
	private final Map<Making, List<List<Stream>>> waiting = new HashMap<>();
	private final Deque<Stream> open = new ArrayDeque<>();
	private final Set<DataProblem> problems = new LinkedHashSet<>();

	StreamGraph(Boat boat, Attachments attachments) {
		this.attachments = attachments;
		boat.serialLines().forEach(line -> lines.put(new Carrier(Carrier.Kind.SERIAL_LINE, line.name()), line));
		attachments.carriers().forEach(each -> byCarrier.put(each, new ArrayList<>()));
		for (FittedDevice device : attachments.devices()) {
			device.sends().forEach(sent -> tell(device, sent));
		}
		follow();
		lines.forEach(this::whatOnlyTheLineSays);
		follow();
	}

	List<Stream> on(Carrier carrier) {
		return byCarrier.get(carrier);
	}

	Iterable<Stream> all() {
		return streams.values();
	}

	Set<DataProblem> problems() {
		return problems;
	}

	/** How often the teller of a stream of its own tells it. */
	Timing ownTiming(Stream sent) {
		return ownTiming.get(sent);
	}

	private void tell(FittedDevice device, SentMessage sent) {
		List<Attachment> fit = new ArrayList<>();
		for (Attachment each : attachments.of(device.name())) {
			if (each.tells() && each.isBy(sent.port()) && fits(each.carrier(), sent.use())) {
				fit.add(each);
			}
		}
		boolean wired = fit.stream().anyMatch(each -> each.carrier().kind() != Carrier.Kind.WIRELESS);
		for (Attachment each : fit) {
			// what is not said to go by radio goes by wire where there is one
			if (sent.port().isPresent() || !wired || each.carrier().kind() != Carrier.Kind.WIRELESS) {
				tell(each, sent.use(), sent.instance(), sent.timing());
			}
		}
	}

	private void tell(Attachment at, MessageUse use, Optional<Integer> instance, Timing timing) {
		Optional<Sending> carried = carried(at.carrier(), use);
		if (carried.isEmpty() && isLimited(at.carrier())) {
			return;
		}
		Key key = new Key(at, use, instance, "own");
		if (!streams.containsKey(key)) {
			Stream stream = Stream.sent(at, use, instance);
			Timing own = carried.map(Sending::timing).filter(stated -> saysSomething(stated, use)).orElse(timing);
			if (own.every().or(own::apart).map(interval -> !(interval.seconds() > 0)).orElse(false)) {
				problems.add(new DataProblem.IntervalImpossible(at.device().name(), use, own.every().or(own::apart).get()));
			}
			ownTiming.put(stream, own);
			add(key, stream);
		}
	}

	/** Whether a line says otherwise than what is usual, which it says too if its text is silent; then its talker knows better. */
	private static boolean saysSomething(Timing stated, MessageUse use) {
		return stated.isStated() && !stated.equals(use.message().timing());
	}

	/** Sentences that only the line itself speaks of are its talker's own. */
	private void whatOnlyTheLineSays(Carrier carrier, SerialLine line) {
		for (Sending each : line.carries()) {
			if (each.use().message() instanceof Sentence && on(carrier).stream().noneMatch(stream -> each.use().covers(stream.use))) {
				attachments.on(carrier).stream().filter(Attachment::tells).findFirst()
						.ifPresent(talker -> tell(talker, each.use(), each.instance(), each.timing()));
			}
		}
	}

	private boolean isLimited(Carrier carrier) {
		return lines.containsKey(carrier) && !lines.get(carrier).carries().isEmpty();
	}

	private Optional<Sending> carried(Carrier carrier, MessageUse use) {
		return isLimited(carrier) ? lines.get(carrier).carries().stream().filter(each -> each.use().covers(use)).findFirst() : Optional.empty();
	}

	private static boolean fits(Carrier carrier, MessageUse use) {
		return switch (carrier.kind()) {
		case NETWORK -> use.message() instanceof Pgn;
		case SERIAL_LINE -> use.message() instanceof Sentence;
		case WIRELESS -> true;
		};
	}

	private void add(Key key, Stream stream) {
		streams.put(key, stream);
		byCarrier.get(stream.carrier()).add(stream);
		open.add(stream);
	}

	private void follow() {
		while (!open.isEmpty()) {
			Stream stream = open.remove();
			for (Attachment hearer : attachments.on(stream.carrier())) {
				if (hearer.hears() && !hearer.device().name().equals(stream.teller())) {
					hearer.device().settings().passes().forEach(passing -> pass(stream, hearer, passing));
					List<Turning> turns = hearer.device().settings().turns();
					for (int rule = 0; rule < turns.size(); rule++) {
						turn(stream, hearer, rule, turns.get(rule));
					}
				}
			}
		}
	}

	private void pass(Stream stream, Attachment in, Passing passing) {
		if (!in.isBy(passing.from()) || passing.messages().map(each -> !each.contains(stream.use.message())).orElse(false)) {
			return;
		}
		if (passesBack(in, passing)) {
			problems.add(new DataProblem.PassesBack(in.device().name(), in.carrier()));
		}
		for (Attachment out : attachments.of(in.device().name())) {
			if (out.tells() && !out.carrier().equals(in.carrier()) && out.isBy(passing.to()) && fits(out.carrier(), stream.use)
					&& (!isLimited(out.carrier()) || carried(out.carrier(), stream.use).isPresent())) {
				Key key = new Key(out, stream.use, stream.instance, stream.origin);
				Stream known = streams.get(key);
				if (known != null) {
					known.alsoFrom(0, stream);
				} else {
					add(key, Stream.passed(out, stream));
				}
			}
		}
	}

	/** Whether both sides of a bridge are on one carrier, and it has no other to pass to. */
	private boolean passesBack(Attachment in, Passing passing) {
		boolean back = false;
		for (Attachment out : attachments.of(in.device().name())) {
			if (out.tells() && out.isBy(passing.to()) && !out.port().equals(in.port())) {
				if (!out.carrier().equals(in.carrier())) {
					return false;
				}
				back = true;
			}
		}
		return back;
	}

	private void turn(Stream stream, Attachment in, int rule, Turning turning) {
		boolean fromLine = turning.from().get(0).message() instanceof Sentence && turning.to().stream().allMatch(each -> each.message() instanceof Pgn);
		if (fromLine && !in.isBy(turning.port())) {
			return;
		}
		for (int i = 0; i < turning.from().size(); i++) {
			if (turning.from().get(i).covers(stream.use)) {
				Making making = new Making(in.device().name(), rule, turning.from().size() == 1 ? stream.instance : Optional.empty());
				use(making, i, stream, in.device(), turning, fromLine ? Optional.empty() : turning.port());
			}
		}
	}

	private void use(Making making, int input, Stream stream, FittedDevice device, Turning turning, Optional<String> by) {
		if (made.containsKey(making)) {
			made.get(making).forEach(each -> each.alsoFrom(input, stream));
			return;
		}
		List<List<Stream>> have = waiting.computeIfAbsent(making, none -> {
			List<List<Stream>> empty = new ArrayList<>();
			turning.from().forEach(each -> empty.add(new ArrayList<>(1)));
			return empty;
		});
		have.get(input).add(stream);
		if (have.stream().noneMatch(List::isEmpty)) {
			waiting.remove(making);
			made.put(making, make(making, have, device, turning, by));
		}
	}

	private List<Stream> make(Making making, List<List<Stream>> have, FittedDevice device, Turning turning, Optional<String> by) {
		List<Stream> result = new ArrayList<>();
		for (MessageUse to : turning.to()) {
			for (Attachment out : attachments.of(device.name())) {
				boolean meant = by.isPresent() ? out.isBy(by) : out.carrier().kind() != Carrier.Kind.WIRELESS;
				if (!out.tells() || !meant || !fits(out.carrier(), to) || isLimited(out.carrier()) && carried(out.carrier(), to).isEmpty()) {
					continue;
				}
				if (have.stream().flatMap(List::stream).anyMatch(each -> each.carrier().equals(out.carrier()) && to.covers(each.use))) {
					problems.add(new DataProblem.TurnsIntoItself(device.name(), to));
					continue;
				}
				Stream turned = Stream.turned(out, to, making.instance, turning);
				for (int i = 0; i < have.size(); i++) {
					int input = i;
					have.get(i).forEach(each -> turned.alsoFrom(input, each));
				}
				add(new Key(out, to, making.instance, making), turned);
				result.add(turned);
			}
		}
		return result;
	}
}
