/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.Map;
import java.util.Optional;

import hullwright.quantity.BitRate;
import hullwright.quantity.Duration;

/**
 * What response times are reckoned with besides the messages. A regular message is taken never to be due sooner than its interval
 * after the one before.
 *
 * @param bus how fast the bus signals, above zero
 * @param jitter how late any message may be in the queue of its controller, on top of the jitter of its own; zero or more
 * @param usualQueue how controllers order what waits
 * @param queues the devices that order it otherwise, by qualified name
 * @param errors the errors of transmission, if any
 * @param frameNotListed whether a device may be sending a frame that no list has when a busy period begins, such as a heartbeat
 *        or an answer about itself; every network has them, but each is rare
 * @param horizon how long the bus may be busy without a pause, above zero; where it may be longer there is no bound
 */
public record BusAssumptions(BitRate bus, Duration jitter, Queueing usualQueue, Map<String, Queueing> queues, Optional<BusErrors> errors,
		boolean frameNotListed, Duration horizon) {

	/** A network of NMEA 2000 without errors and jitter, whose controllers send the most urgent message first. */
	public static final BusAssumptions STANDARD = new BusAssumptions(BusLoad.NMEA_2000, new Duration(0), Queueing.BY_PRIORITY, Map.of(),
			Optional.empty(), true, new Duration(10));

	public BusAssumptions {
		queues = Map.copyOf(queues);
		if (!(bus.bitsPerSecond() > 0 && jitter.seconds() >= 0 && horizon.seconds() > 0)
				|| bus.bitsPerSecond() * horizon.seconds() > Integer.MAX_VALUE) {
			throw new IllegalArgumentException("a bus signals, jitter is not negative, and the horizon is some seconds or minutes");
		}
	}

	/** The same with another jitter. */
	public BusAssumptions withJitter(Duration other) {
		return new BusAssumptions(bus, other, usualQueue, queues, errors, frameNotListed, horizon);
	}

	/** The same with another order of what waits in all controllers. */
	public BusAssumptions withQueues(Queueing all) {
		return new BusAssumptions(bus, jitter, all, Map.of(), errors, frameNotListed, horizon);
	}

	/** The same with errors of transmission. */
	public BusAssumptions withErrors(BusErrors other) {
		return new BusAssumptions(bus, jitter, usualQueue, queues, Optional.of(other), frameNotListed, horizon);
	}

	/** In which order the controller of a device sends. */
	public Queueing queueOf(String device) {
		return queues.getOrDefault(device, usualQueue);
	}
}
