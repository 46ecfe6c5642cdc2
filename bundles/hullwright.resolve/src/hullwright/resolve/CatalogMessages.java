/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import hullwright.network.data.KeyField;
import hullwright.network.data.KeyValue;
import hullwright.network.data.Message;
import hullwright.network.data.MessageUse;
import hullwright.network.data.Passing;
import hullwright.network.data.Pgn;
import hullwright.network.data.Sending;
import hullwright.network.data.Sentence;
import hullwright.network.data.Showing;
import hullwright.network.data.Timing;
import hullwright.network.data.Turning;
import hullwright.network.data.Wanting;

/**
 * Copies messages from catalogs into records, each once, and what devices do with them.
 */
final class CatalogMessages {

	private final Map<hullwright.spec.Message, Message> copied = new IdentityHashMap<>();

	Message of(hullwright.spec.Message message) {
		return copied.computeIfAbsent(message, CatalogMessages::copy);
	}

	private static Message copy(hullwright.spec.Message message) {
		Timing timing = new Timing(Optional.ofNullable(message.getEvery()), message.isOnEvent(), Optional.empty());
		String title = Copying.text(message.getTitle());
		if (message instanceof hullwright.spec.Pgn pgn) {
			Pgn.Transport transport = pgn.isFast() ? Pgn.Transport.FAST : pgn.isSingle() ? Pgn.Transport.SINGLE : Pgn.Transport.UNSTATED;
			List<KeyField> keys = pgn.getKeys().stream().map(key -> new KeyField(key.getName(), Copying.names(key.getValues()))).toList();
			return new Pgn(number(pgn.getName()), title, transport, pgn.getLength(), pgn.isVaries(), timing,
					Optional.ofNullable(pgn.getPriority()), pgn.isInstance(), keys,
					pgn.getSuccessors().stream().filter(hullwright.spec.Pgn.class::isInstance).map(each -> number(each.getName())).toList());
		}
		return new Sentence(message.getName(), title, message.getLength(), timing);
	}

	/** A PGN has 18 bits; what is larger was a slip, which the language tells. */
	private static int number(String name) {
		try {
			return Integer.parseInt(name);
		} catch (NumberFormatException e) {
			return -1;
		}
	}

	MessageUse use(hullwright.spec.MessageUse use) {
		Optional<KeyValue> value = Optional.ofNullable(use.getValue())
				.map(stated -> new KeyValue(((hullwright.spec.KeyField) stated.eContainer()).getName(), stated.getName()));
		return new MessageUse(of(use.getMessage()), value);
	}

	List<MessageUse> uses(List<hullwright.spec.MessageUse> uses) {
		return uses.stream().map(this::use).toList();
	}

	Sending sending(hullwright.spec.Sending sending) {
		MessageUse use = use(sending);
		boolean stated = sending.getEvery() != null || sending.isOnEvent();
		Timing timing = stated
				? new Timing(Optional.ofNullable(sending.getEvery()), sending.isOnEvent(), Optional.ofNullable(sending.getApart()))
				: use.message().timing();
		return new Sending(use, timing, Math.max(1, sending.getInstances()), sending.isSettable(), Optional.ofNullable(sending.getInstance()),
				Copying.name(sending.getPort()));
	}

	Wanting wanting(hullwright.spec.Wanting wanting) {
		return new Wanting(uses(wanting.getUses()), Optional.ofNullable(wanting.getAtLeastEvery()), Copying.name(wanting.getPort()));
	}

	Showing showing(hullwright.spec.Showing showing) {
		return new Showing(uses(showing.getUses()), showing.isSourceSelectable(), Copying.name(showing.getPort()));
	}

	Turning turning(hullwright.spec.Turning turning) {
		return new Turning(uses(turning.getFrom()), uses(turning.getTo()), Optional.ofNullable(turning.getAtMostEvery()),
				Copying.name(turning.getPort()));
	}

	Passing passing(hullwright.spec.Passing passing) {
		Optional<List<Message>> messages = passing.isAll()
				? Optional.empty()
				: Optional.of(passing.getMessages().stream().map(this::of).toList());
		return new Passing(messages, Copying.name(passing.getFrom()), Copying.name(passing.getTo()));
	}
}
