/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.quantity.BitRate;
import hullwright.quantity.Duration;

/**
 * What may be sent within one second at most, if all regular messages fall together at its start and everything that events
 * send comes once, messages without a declared least interval included.
 *
 * @param frames its frames; there may be more than go over the bus in a second
 * @param worstBits their bits with as many inserted ones as there can be
 * @param typicalBits their bits on a usual boat
 * @param worstShare the part of the second that the bus is busy with them at worst; above 1 the rest waits for the next
 * @param typicalShare the part of the second that the bus is busy with them on a usual boat
 */
public record BusiestSecond(long frames, double worstBits, double typicalBits, double worstShare, double typicalShare) {

	private static final double ROUNDING = 1e-9;

	static BusiestSecond of(NetworkTraffic traffic, BitRate bus) {
		long frames = 0;
		double worst = 0;
		double typical = 0;
		for (BusMessage message : traffic.messages()) {
			long times = message.release().regular() ? timesInASecond(message.release().interval()) : 1;
			frames += times * message.packet().frames();
			worst += times * message.packet().worstBits();
			typical += times * message.packet().typicalBits();
		}
		for (LeftOut event : traffic.leftOut()) {
			if (event.reason() == LeftOut.Reason.EVENT_WITHOUT_LEAST_INTERVAL && event.packet().isPresent()) {
				frames += event.count() * event.packet().get().frames();
				worst += event.count() * event.packet().get().worstBits();
				typical += event.count() * event.packet().get().typicalBits();
			}
		}
		return new BusiestSecond(frames, worst, typical, worst / bus.bitsPerSecond(), typical / bus.bitsPerSecond());
	}

	private static long timesInASecond(Duration interval) {
		return Math.max(1, (long) Math.ceil(1 / interval.seconds() - ROUNDING));
	}
}
