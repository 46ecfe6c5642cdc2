/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.analysis.traffic.PassedMessage;
import hullwright.network.data.Pgn;
import hullwright.network.data.SentMessage;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What bridges and gateways bring into networks, and by what it may come late there.
 */
final class PassedOn {

	private final StreamTimings timings;

	PassedOn(StreamTimings timings) {
		this.timings = timings;
	}

	/** What is brought into networks. */
	List<PassedMessage> of(Attachments attachments, StreamGraph graph) {
		List<PassedMessage> passed = new ArrayList<>();
		for (Carrier carrier : attachments.carriers()) {
			if (carrier.kind() == Carrier.Kind.NETWORK) {
				graph.on(carrier).stream().filter(each -> each.how != ToldMessage.How.SENT).forEach(each -> passed.add(passed(each)));
			}
		}
		return passed;
	}

	private PassedMessage passed(Stream stream) {
		Set<PassedMessage.Heard> heard = new LinkedHashSet<>();
		back(stream, new LinkedHashSet<>(), new LinkedHashSet<>(), heard);
		return new PassedMessage(stream.carrier().name(), stream.teller(),
				new SentMessage(stream.use, timings.of(stream), stream.instance, Optional.empty()), List.copyOf(heard));
	}

	/** Goes back to where the message was on a network last, or comes at regular intervals. */
	private static void back(Stream stream, Set<String> over, Set<Stream> seen, Set<PassedMessage.Heard> heard) {
		if (isEven(stream) || !seen.add(stream)) {
			return;
		}
		for (List<Stream> alternatives : stream.inputs) {
			for (Stream input : alternatives) {
				if (input.carrier().kind() == Carrier.Kind.NETWORK && input.use.message() instanceof Pgn pgn) {
					heard.add(new PassedMessage.Heard(Optional.of(new PassedMessage.SentOn(input.carrier().name(), input.teller(), pgn.number(),
							input.use.value(), input.instance)), List.copyOf(over)));
					continue;
				}
				Set<String> further = new LinkedHashSet<>(over);
				further.add(input.carrier().name());
				if (isEven(input)) {
					heard.add(new PassedMessage.Heard(Optional.empty(), List.copyOf(further)));
				} else {
					back(input, further, seen, heard);
				}
			}
		}
	}

	/** Whether messages are told apart by their interval at least: its own, or by a gateway that keeps them apart. */
	private static boolean isEven(Stream stream) {
		return stream.how == ToldMessage.How.SENT || stream.turning.flatMap(turning -> turning.atMostEvery()).isPresent();
	}
}
