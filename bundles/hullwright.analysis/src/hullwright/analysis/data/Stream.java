/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import hullwright.network.data.Turning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A message of one origin that one device tells on one carrier, while the flow is followed. What it is made from is found bit by
 * bit, and may lead in circles.
 */
final class Stream {

	final Attachment at;
	final MessageUse use;
	final Optional<Integer> instance;
	final ToldMessage.How how;
	/** The stream that began with a device of its own or with a gateway; this one, unless it is passed on. */
	final Stream origin;
	/** For a stream that a gateway makes, by what rule. */
	final Optional<Turning> turning;
	/** What it is made from: one entry for each message that is needed, with those that can stand for it. */
	final List<List<Stream>> inputs;
	final List<Stream> outputs = new ArrayList<>(2);

	private Stream(Attachment at, MessageUse use, Optional<Integer> instance, ToldMessage.How how, Stream origin, Optional<Turning> turning,
			List<List<Stream>> inputs) {
		this.at = at;
		this.use = use;
		this.instance = instance;
		this.how = how;
		this.origin = origin == null ? this : origin;
		this.turning = turning;
		this.inputs = inputs;
	}

	static Stream sent(Attachment at, MessageUse use, Optional<Integer> instance) {
		return new Stream(at, use, instance, ToldMessage.How.SENT, null, Optional.empty(), List.of());
	}

	static Stream passed(Attachment at, Stream first) {
		Stream passed = new Stream(at, first.use, first.instance, ToldMessage.How.PASSED, first.origin, Optional.empty(), List.of(new ArrayList<>(1)));
		passed.alsoFrom(0, first);
		return passed;
	}

	static Stream turned(Attachment at, MessageUse use, Optional<Integer> instance, Turning turning) {
		List<List<Stream>> inputs = new ArrayList<>();
		turning.from().forEach(each -> inputs.add(new ArrayList<>(1)));
		return new Stream(at, use, instance, ToldMessage.How.TURNED, null, Optional.of(turning), inputs);
	}

	/** Another stream that can stand for a message that is needed. */
	void alsoFrom(int input, Stream stream) {
		if (!inputs.get(input).contains(stream)) {
			inputs.get(input).add(stream);
			stream.outputs.add(this);
		}
	}

	Carrier carrier() {
		return at.carrier();
	}

	String teller() {
		return at.device().name();
	}
}
