/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import java.util.List;

/**
 * Messages that come back to where they were and are told again: each time round they multiply.
 *
 * @param devices the qualified names of the bridges and gateways that send them round
 * @param carriers the carriers on the way round
 * @param messages what goes round
 */
public record EchoLoop(List<String> devices, List<Carrier> carriers, List<MessageUse> messages) {

	public EchoLoop {
		devices = List.copyOf(devices);
		carriers = List.copyOf(carriers);
		messages = List.copyOf(messages);
	}
}
