/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

import java.util.Optional;

/**
 * A message, or those of its sources that a key value picks.
 *
 * @param message the message
 * @param value which of its sources; any, if empty
 */
public record MessageUse(Message message, Optional<KeyValue> value) {

	/** Whether what is told as the other answers to this: the same message, and no other key value. */
	public boolean covers(MessageUse told) {
		return message.equals(told.message) && (value.isEmpty() || told.value.isEmpty() || value.equals(told.value));
	}

	/** By the name of the message alone, which is cheap where many are looked up; equal messages have equal names. */
	@Override
	public int hashCode() {
		return 31 * message.name().hashCode() + value.hashCode();
	}

	@Override
	public String toString() {
		return message.name() + value.map(stated -> " as " + stated.value()).orElse("");
	}
}
