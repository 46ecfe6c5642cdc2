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
 * A message on a carrier.
 *
 * @param teller the qualified name of the device that puts it there
 * @param use the message and its key value
 * @param instance the data instance, if the message has one
 * @param timing how often it is told there
 * @param how whether it is the teller's own
 * @param heard for what the teller passes on or makes from others, where it hears it and as what; going back from there leads to
 *        the sources
 * @param sources where its data come from; of several, each alone may stand behind it
 */
public record ToldMessage(String teller, MessageUse use, Optional<Integer> instance, Timing timing, How how, List<Heard> heard,
		List<DataSource> sources) {

	/**
	 * Where a message is heard.
	 *
	 * @param carrier what carries it
	 * @param teller the qualified name of the device that tells it there
	 * @param use the message and its key value
	 */
	public record Heard(Carrier carrier, String teller, MessageUse use) {
	}

	/** How a message comes to be told. */
	public enum How {
		/** It is the teller's own. */
		SENT,
		/** A bridge passes it on unchanged. */
		PASSED,
		/** A gateway makes it from others. */
		TURNED
	}

	public ToldMessage {
		heard = List.copyOf(heard);
		sources = List.copyOf(sources);
	}
}
