/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

/**
 * How long a frame of the network is on the wire: a data frame of CAN with an identifier of 29 bits.
 *
 * <p>Controllers insert a bit after five equal ones. At most that is every fourth bit after the first, so that a frame of
 * {@code s} bytes has {@code 67 + 8s} bits and at most {@code 80 + 10s} with the inserted ones: Davis, Burns, Bril, Lukkien,
 * "Controller Area Network (CAN) schedulability analysis: refuted, revisited and revised", Real-Time Systems 35, 2007,
 * equations 1 to 3, as the open program canframelen (Debian package can-utils) quotes them. The three bits between frames
 * are counted.
 *
 * @param unstuffed its bits without inserted ones
 * @param worst its bits with as many inserted ones as there can be
 */
public record FrameLength(int unstuffed, int worst) {

	/** The most bytes that a frame carries. */
	public static final int MOST_BYTES = 8;

	/** A frame of eight bytes, the longest. */
	public static final FrameLength FULL = of(MOST_BYTES);

	/**
	 * How many bits boats insert for each that they send: 0.082, measured on the three recordings of a bus with 44 addresses
	 * in the open CANboat sample logs; 0.084 on that of a small bus. Random data would need 0.031: fields that are not used are
	 * runs of ones.
	 */
	public static final double TYPICAL_STUFFING = 0.082;

	private static final int SUBJECT_TO_STUFFING = 54;
	private static final int NEVER_STUFFED = 13;

	/**
	 * The length of a frame.
	 *
	 * @param bytes how much it carries
	 * @throws IllegalArgumentException if no frame carries so much
	 */
	public static FrameLength of(int bytes) {
		if (bytes < 0 || bytes > MOST_BYTES) {
			throw new IllegalArgumentException("a frame carries 0 to " + MOST_BYTES + " bytes, not " + bytes);
		}
		int stuffable = SUBJECT_TO_STUFFING + 8 * bytes;
		int unstuffed = stuffable + NEVER_STUFFED;
		return new FrameLength(unstuffed, unstuffed + (stuffable - 1) / 4);
	}

	/** Its bits on a usual boat, an expectation and no whole number. */
	public double typical() {
		return unstuffed * (1 + TYPICAL_STUFFING);
	}
}
