/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

/**
 * The very bits of a data frame with a 29-bit identifier, with those that the controller inserts: ISO 11898-1, from memory. Shares
 * no code with {@link FrameLength}.
 */
final class WireBits {

	private static final int CHECKSUM_POLYNOMIAL = 0x4599;

	private final boolean[] bits = new boolean[160];
	private int count;
	private int checksum;

	private WireBits() {
	}

	/** How many bits a frame has from its first to the three between it and the next, inserted ones counted. */
	static int of(int identifier, int[] data) {
		WireBits frame = new WireBits();
		frame.add(0, 1);
		frame.add(identifier >> 18, 11);
		frame.add(0b11, 2);
		frame.add(identifier, 18);
		frame.add(0b000, 3);
		frame.add(data.length, 4);
		for (int each : data) {
			frame.add(each, 8);
		}
		frame.add(frame.checksum, 15);
		int delimiters = 3;
		int endOfFrame = 7;
		int betweenFrames = 3;
		return frame.count + frame.inserted() + delimiters + endOfFrame + betweenFrames;
	}

	/** The checksum of CAN over bytes. */
	static int checksum(byte[] bytes) {
		WireBits all = new WireBits();
		for (byte each : bytes) {
			all.add(each, 8);
		}
		return all.checksum;
	}

	private void add(int value, int width) {
		for (int bit = width - 1; bit >= 0; bit--) {
			boolean set = (value >> bit & 1) != 0;
			bits[count++] = set;
			boolean carry = set ^ (checksum >> 14 & 1) != 0;
			checksum = checksum << 1 & 0x7FFF ^ (carry ? CHECKSUM_POLYNOMIAL : 0);
		}
	}

	/** After five equal bits one of the other kind comes in, and begins to count itself. */
	private int inserted() {
		int inserted = 0;
		int run = 0;
		boolean last = true;
		for (int i = 0; i < count; i++) {
			run = i > 0 && bits[i] == last ? run + 1 : 1;
			last = bits[i];
			if (run == 5) {
				inserted++;
				last = !last;
				run = 1;
			}
		}
		return inserted;
	}
}
