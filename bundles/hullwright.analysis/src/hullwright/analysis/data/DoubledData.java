/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import java.util.List;

/**
 * The same data told twice on one carrier, by different devices: as two sources of which nobody knows that they are one.
 *
 * @param carrier where
 * @param tellers the qualified names of the devices that tell them
 * @param messages what they tell
 */
public record DoubledData(Carrier carrier, List<String> tellers, List<MessageUse> messages) {

	public DoubledData {
		tellers = List.copyOf(tellers);
		messages = List.copyOf(messages);
	}
}
