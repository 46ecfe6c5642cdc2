/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.quantity.BitRate;
import hullwright.quantity.Duration;

/**
 * What the bus carries when a network is switched on. Assumed: all devices start together; each address is claimed once, so no
 * two devices want the same one; after its claims no device says anything for 250 ms (NMEA 2000 library for C++, glossary);
 * then one device asks all for their product information, and each address answers with 134 bytes in 20 frames. Devices that
 * want the same address claim again and again, which adds frames, and answers mix with what is sent regularly.
 *
 * @param addresses how many addresses are claimed
 * @param claims the claims, one frame for each address (PGN 60928)
 * @param productInformation the question (PGN 59904, three bytes) and the answers (PGN 126996)
 * @param quiet how long devices are silent after their claims
 */
public record PowerUp(int addresses, Stretch claims, Stretch productInformation, Duration quiet) {

	private static final Duration QUIET_AFTER_CLAIM = new Duration(0.250);
	private static final FrameLength CLAIM = FrameLength.of(8);
	private static final FrameLength REQUEST = FrameLength.of(3);
	private static final int FRAMES_OF_PRODUCT_INFORMATION = Frames.ofFastPacket(134);

	/**
	 * Frames that follow each other.
	 *
	 * @param frames how many
	 * @param busy how long the bus is busy with them alone, at most
	 */
	public record Stretch(long frames, Duration busy) {
	}

	/**
	 * The start of a network.
	 *
	 * @param bus how fast it signals, above zero
	 */
	public static PowerUp of(NetworkTraffic traffic, BitRate bus) {
		int addresses = traffic.nodes().stream().mapToInt(Node::addresses).sum();
		long answers = (long) addresses * FRAMES_OF_PRODUCT_INFORMATION;
		return new PowerUp(addresses,
				stretch(addresses, (long) addresses * CLAIM.worst(), bus),
				stretch(1 + answers, REQUEST.worst() + answers * FrameLength.FULL.worst(), bus),
				QUIET_AFTER_CLAIM);
	}

	private static Stretch stretch(long frames, long bits, BitRate bus) {
		return new Stretch(frames, new Duration(bits / bus.bitsPerSecond()));
	}
}
