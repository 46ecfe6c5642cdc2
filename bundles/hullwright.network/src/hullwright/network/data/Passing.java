/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

import java.util.List;
import java.util.Optional;

/**
 * What a bridge passes on unchanged.
 *
 * @param messages what it passes; everything, if empty
 * @param from the port that it comes in by; any, if empty
 * @param to the port that it goes out by; all others, if empty
 */
public record Passing(Optional<List<Message>> messages, Optional<String> from, Optional<String> to) {

	public Passing {
		messages = messages.map(List::copyOf);
	}
}
