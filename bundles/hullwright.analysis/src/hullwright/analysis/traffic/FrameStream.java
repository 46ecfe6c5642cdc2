/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

/**
 * What the bus sees of a message: equal frames that come together, again and again, each burst after the one before. Times are
 * in bits.
 *
 * @param sender the device
 * @param queue how its controller orders what waits
 * @param identifiers where the identifier may lie
 * @param frames how many come together, at least 1
 * @param frameBits how long each of them is at most
 * @param interval the least time from one burst to the next, at least 1
 * @param jitter how much the moment may differ at which they stand in the queue
 */
record FrameStream(String sender, Queueing queue, Identifiers identifiers, int frames, int frameBits, long interval, long jitter) {

	/** The bits of all frames that come together. */
	long burstBits() {
		return (long) frames * frameBits;
	}
}
