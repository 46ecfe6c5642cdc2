/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

import java.util.List;
import java.util.Optional;

/**
 * Messages that a device shows when it gets them.
 *
 * @param uses the messages
 * @param sourceSelectable whether the user chooses among several sources
 * @param port the port that they are listened for on; any, if empty
 */
public record Showing(List<MessageUse> uses, boolean sourceSelectable, Optional<String> port) {

	public Showing {
		uses = List.copyOf(uses);
	}
}
