/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import java.util.List;

/**
 * What a carrier carries.
 *
 * @param carrier the network, line or hop
 * @param messages what is told on it, in the order in which devices, bridges and gateways come by it
 */
public record CarrierTraffic(Carrier carrier, List<ToldMessage> messages) {

	public CarrierTraffic {
		messages = List.copyOf(messages);
	}
}
