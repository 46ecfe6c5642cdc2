/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.ArrayList;
import java.util.List;

import hullwright.quantity.Duration;

/**
 * How long each message of a network takes at most from when it is due until it is through, whatever addresses the devices
 * claim. See {@link PriorityQueue} and {@link FirstInFirstOut} for the published analyses, {@link WorstCaseDelays} for why the
 * bounds hold for every order of addresses.
 *
 * <p>The bounds hold as long as nothing but the messages of the traffic is sent, save for one other frame in a busy period if
 * the assumptions say so; {@link NetworkTraffic#leftOut()} tells what is missing. Controllers must take part in each arbitration
 * with the frame that their {@link Queueing} says; those that cannot exchange a frame for a more urgent one once it is in
 * their only buffer are slower.
 *
 * @param network the qualified name of the network
 * @param assumptions what they are reckoned with
 * @param messages the messages, in the order of the traffic
 */
public record ResponseTimes(String network, BusAssumptions assumptions, List<MessageResponse> messages) {

	/** Beyond this no number of bits matters; it keeps sums of them within a long. */
	private static final double MOST_BITS = 1L << 50;

	/** Fractions of a bit that are rounding of the arithmetic. */
	private static final double ROUNDING = 1e-6;

	public ResponseTimes {
		messages = List.copyOf(messages);
	}

	/** The response times of the messages of a network. */
	public static ResponseTimes of(NetworkTraffic traffic, BusAssumptions assumptions) {
		List<FrameStream> streams = traffic.messages().stream().map(message -> stream(message, assumptions)).toList();
		List<Delay> delays = WorstCaseDelays.of(streams, terms(assumptions));
		List<MessageResponse> messages = new ArrayList<>();
		for (int i = 0; i < delays.size(); i++) {
			messages.add(new MessageResponse(traffic.messages().get(i), time(delays.get(i), assumptions)));
		}
		return new ResponseTimes(traffic.network(), assumptions, messages);
	}

	/** Intervals are rounded down to whole bits and jitter up, which can only lengthen what comes out. */
	private static FrameStream stream(BusMessage message, BusAssumptions assumptions) {
		Duration jitter = message.jitter().plus(assumptions.jitter());
		return new FrameStream(message.sender(), assumptions.queueOf(message.sender()), message.identifiers(), message.packet().frames(),
				message.packet().frame().worst(), Math.max(1, bitsDown(message.release().interval(), assumptions)), bitsUp(jitter, assumptions));
	}

	private static BusTerms terms(BusAssumptions assumptions) {
		return new BusTerms(assumptions.frameNotListed() ? FrameLength.FULL.worst() : 0,
				assumptions.errors().map(BusErrors::atOnce).orElse(0),
				assumptions.errors().map(errors -> Math.max(1, bitsDown(errors.apart(), assumptions))).orElse(1L),
				bitsDown(assumptions.horizon(), assumptions));
	}

	private static long bitsDown(Duration duration, BusAssumptions assumptions) {
		return (long) Math.floor(bits(duration, assumptions) + ROUNDING);
	}

	private static long bitsUp(Duration duration, BusAssumptions assumptions) {
		return Math.max(0, (long) Math.ceil(bits(duration, assumptions) - ROUNDING));
	}

	private static double bits(Duration duration, BusAssumptions assumptions) {
		return Math.min(MOST_BITS, duration.seconds() * assumptions.bus().bitsPerSecond());
	}

	private static ResponseTime time(Delay delay, BusAssumptions assumptions) {
		if (delay instanceof Delay.Bounded bounded) {
			return new ResponseTime.Bounded(seconds(bounded.bits(), assumptions), seconds(bounded.busyPeriod(), assumptions));
		}
		return new ResponseTime.Unbounded(((Delay.Unbounded) delay).reason());
	}

	private static Duration seconds(long bits, BusAssumptions assumptions) {
		return new Duration(bits / assumptions.bus().bitsPerSecond());
	}
}
