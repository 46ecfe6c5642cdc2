/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

/**
 * What the analysis finds for one stream of frames, in bits.
 */
sealed interface Delay {

	/**
	 * A bound.
	 *
	 * @param bits the longest time from when a burst is due to the end of its last frame
	 * @param instance which burst of a busy period takes longest, counted from 0
	 * @param busyPeriod how long the busy period is
	 */
	record Bounded(long bits, long instance, long busyPeriod) implements Delay {
	}

	/** None, and why. */
	record Unbounded(ResponseTime.Reason reason) implements Delay {
	}
}
