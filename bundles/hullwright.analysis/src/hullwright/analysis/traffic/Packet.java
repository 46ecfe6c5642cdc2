/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.Optional;
import java.util.OptionalInt;

import hullwright.network.data.Pgn;

/**
 * How a message is cut into frames. All frames of a fast packet are full, since unused bytes are filled (seen in the open
 * CANboat sample logs); so is a single frame whose length varies.
 *
 * @param bytes its length in bytes
 * @param estimated whether that is an estimate, since the length varies
 * @param fast whether it is a fast packet
 * @param frames how many frames it takes, at least 1
 * @param frame how long each of them is
 */
public record Packet(int bytes, boolean estimated, boolean fast, int frames, FrameLength frame) {

	/** How a message of its usual length is cut; empty if the list does not say how it is framed or how long it is. */
	public static Optional<Packet> of(Pgn pgn) {
		OptionalInt frames = Frames.of(pgn);
		if (frames.isEmpty()) {
			return Optional.empty();
		}
		boolean fast = pgn.transport() == Pgn.Transport.FAST;
		FrameLength frame = fast || pgn.varies() ? FrameLength.FULL : FrameLength.of(pgn.length());
		return Optional.of(new Packet(pgn.length(), pgn.varies(), fast, frames.getAsInt(), frame));
	}

	/** Its bits with as many inserted ones as there can be. */
	public int worstBits() {
		return frames * frame.worst();
	}

	/** Its bits on a usual boat. */
	public double typicalBits() {
		return frames * frame.typical();
	}
}
