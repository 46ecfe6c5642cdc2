/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import hullwright.network.data.Timing;
import java.util.List;
import java.util.Optional;

/**
 * A datum that reaches a device: messages of which nothing but the source tells one from the other.
 *
 * @param use the message and its key value, as it arrives
 * @param instance the data instance, if the message has one
 * @param timing how often it comes at most
 * @param tellers the qualified names of the devices that the device hears it from: of what is passed on or turned, the last
 * @param sources where it begins
 * @param choice how the device comes to take one of several
 * @param taken which of the tellers it takes; none if that cannot be told
 */
public record ReceivedData(MessageUse use, Optional<Integer> instance, Timing timing, List<String> tellers, List<DataSource> sources,
		Choice choice, Optional<String> taken) {

	/** How a device comes to take one source of several. */
	public enum Choice {
		/** There is one source, by whatever ways it comes. */
		NO_OTHER,
		/** The text sets it. */
		SET,
		/** The user chooses at the device. */
		BY_USER,
		/** Nobody says: that which comes first, or comes last, or is chosen by a rule of the device's own. */
		NOT_TOLD
	}

	public ReceivedData {
		tellers = List.copyOf(tellers);
		sources = List.copyOf(sources);
	}
}
