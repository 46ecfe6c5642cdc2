/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import java.util.Optional;

import hullwright.network.data.KeyValue;
import hullwright.network.data.Pgn;

/**
 * A message that a device sends and that no figure of the traffic counts, with the reason.
 *
 * @param sender the qualified name of the device
 * @param pgn what it is
 * @param value which of its sources, if the device says
 * @param count how many of it the device sends, with data instances of their own
 * @param packet how it is cut into frames, if that is known
 * @param reason why it is left out
 */
public record LeftOut(String sender, Pgn pgn, Optional<KeyValue> value, int count, Optional<Packet> packet, Reason reason) {

	/** Why a message is left out. */
	public enum Reason {
		/** It is sent when something happens, and nothing says how often that is at most. */
		EVENT_WITHOUT_LEAST_INTERVAL(false),
		/** Nothing says when it is sent. */
		TIMING_UNSTATED(false),
		/** Nothing says whether it is a single frame or a fast packet. */
		FRAMING_UNSTATED(false),
		/** Nothing says how long it is. */
		LENGTH_UNSTATED(false),
		/** It is longer than its frames can carry, or shorter than nothing. */
		LENGTH_IMPOSSIBLE(true),
		/** Its interval is not above zero, or no time at all. */
		INTERVAL_IMPOSSIBLE(true),
		/** No PGN has this number. */
		NUMBER_IMPOSSIBLE(true);

		private final boolean mistake;

		Reason(boolean mistake) {
			this.mistake = mistake;
		}

		/** Whether the text or the catalog states something that cannot be, not only too little. */
		public boolean isMistake() {
			return mistake;
		}
	}
}
