/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import hullwright.network.data.Timing;
import hullwright.quantity.Duration;
import java.util.List;

/**
 * A way of data from a source to a device.
 *
 * @param source where it begins
 * @param legs the carriers that it takes, in order
 * @param timing how often it arrives
 * @param delay how long it is under way at most: serial lines with the wait behind other sentences, wireless hops, gateways until they
 *        tell again. Networks are not counted, which take milliseconds (the response times of their traffic tell), nor the time
 *        that a device takes to think
 * @param unstated the qualified names of carriers and gateways that take some time on top of which no text tells, or without a bound
 */
public record DataPath(DataSource source, List<Leg> legs, Timing timing, Duration delay, List<String> unstated) {

	public DataPath {
		legs = List.copyOf(legs);
		unstated = List.copyOf(unstated);
	}

	/**
	 * A part of a way.
	 *
	 * @param carrier what carries it
	 * @param teller the qualified name of the device that puts it there
	 * @param how how that device comes by it
	 * @param use as what it is told there
	 */
	public record Leg(Carrier carrier, String teller, ToldMessage.How how, MessageUse use) {
	}
}
