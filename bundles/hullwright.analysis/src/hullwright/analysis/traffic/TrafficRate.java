/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.quantity.BitRate;
import hullwright.quantity.Duration;

/**
 * How much traffic there is in the long run.
 *
 * @param framesPerSecond its frames in a second
 * @param worst its bits in a second with as many inserted ones as there can be, see {@link FrameLength}
 * @param typical its bits in a second on a usual boat
 */
public record TrafficRate(double framesPerSecond, BitRate worst, BitRate typical) {

	/** No traffic. */
	public static final TrafficRate NONE = new TrafficRate(0, new BitRate(0), new BitRate(0));

	/** The traffic of a message that comes once in an interval. */
	static TrafficRate of(Packet packet, Duration interval) {
		return new TrafficRate(packet.frames() / interval.seconds(), new BitRate(packet.worstBits() / interval.seconds()),
				new BitRate(packet.typicalBits() / interval.seconds()));
	}

	/** Both together. */
	public TrafficRate plus(TrafficRate other) {
		return new TrafficRate(framesPerSecond + other.framesPerSecond, worst.plus(other.worst), typical.plus(other.typical));
	}

	/** The part of a bus that it takes with as many inserted bits as there can be: 1 is all of it, and more can be asked for. */
	public double worstShareOf(BitRate bus) {
		return worst.dividedBy(bus);
	}

	/** The part of a bus that it takes on a usual boat: 1 is all of it. */
	public double typicalShareOf(BitRate bus) {
		return typical.dividedBy(bus);
	}
}
