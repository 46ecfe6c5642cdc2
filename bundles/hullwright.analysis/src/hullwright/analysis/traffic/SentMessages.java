/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import hullwright.network.data.KeyValue;
import hullwright.network.data.Pgn;
import hullwright.network.data.SentMessage;
import hullwright.network.data.Timing;
import hullwright.quantity.Duration;

/**
 * Sorts what devices send into messages that can be reckoned with and messages that are left out. The instances of one
 * message that is left out are told once.
 */
final class SentMessages {

	/** No message comes again within a microsecond: that is a quarter of a bit. */
	private static final double SHORTEST_INTERVAL = 1e-6;

	private final List<BusMessage> messages = new ArrayList<>();
	private final List<LeftOut> leftOut = new ArrayList<>();

	void add(String sender, Pgn pgn, SentMessage sent, Duration jitter) {
		Optional<KeyValue> value = sent.use().value();
		Optional<Packet> packet = Packet.of(pgn);
		Optional<LeftOut.Reason> reason = doubt(pgn, packet).or(() -> doubt(sent.timing()));
		if (reason.isPresent()) {
			leaveOut(new LeftOut(sender, pgn, value, 1, packet, reason.get()));
			return;
		}
		Timing timing = sent.timing();
		Release release = new Release(timing.every().isPresent(), timing.every().or(timing::apart).orElseThrow());
		messages.add(new BusMessage(sender, pgn, value, sent.instance(), packet.orElseThrow(), Identifiers.of(pgn), release, jitter));
	}

	private static Optional<LeftOut.Reason> doubt(Pgn pgn, Optional<Packet> packet) {
		if (!Identifiers.canBe(pgn.number())) {
			return Optional.of(LeftOut.Reason.NUMBER_IMPOSSIBLE);
		} else if (packet.isPresent()) {
			return Optional.empty();
		} else if (pgn.length() == 0) {
			return Optional.of(LeftOut.Reason.LENGTH_UNSTATED);
		}
		return Optional.of(pgn.transport() == Pgn.Transport.UNSTATED ? LeftOut.Reason.FRAMING_UNSTATED : LeftOut.Reason.LENGTH_IMPOSSIBLE);
	}

	private static Optional<LeftOut.Reason> doubt(Timing timing) {
		Optional<Duration> interval = timing.every().or(timing::apart);
		if (interval.isEmpty()) {
			return Optional.of(timing.onEvent() ? LeftOut.Reason.EVENT_WITHOUT_LEAST_INTERVAL : LeftOut.Reason.TIMING_UNSTATED);
		}
		double seconds = interval.get().seconds();
		return seconds >= SHORTEST_INTERVAL && Double.isFinite(seconds) ? Optional.empty() : Optional.of(LeftOut.Reason.INTERVAL_IMPOSSIBLE);
	}

	private void leaveOut(LeftOut one) {
		for (int i = 0; i < leftOut.size(); i++) {
			LeftOut other = leftOut.get(i);
			if (new LeftOut(one.sender(), one.pgn(), one.value(), other.count(), one.packet(), one.reason()).equals(other)) {
				leftOut.set(i, new LeftOut(one.sender(), one.pgn(), one.value(), other.count() + 1, one.packet(), one.reason()));
				return;
			}
		}
		leftOut.add(one);
	}

	List<BusMessage> messages() {
		return messages;
	}

	List<LeftOut> leftOut() {
		return leftOut;
	}
}
