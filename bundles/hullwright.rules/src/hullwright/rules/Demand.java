/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

/**
 * Something that a house wants said of everything of a kind: {@code require label on every device}.
 *
 * @param what what must be said
 * @param on of what
 * @param source where the house says so
 */
public record Demand(What what, On on, String source) {

	/** What can be demanded. */
	public enum What {
		/** What is written on the thing on board. */
		LABEL,
		/** Where on board it is. */
		PLACE,
		/** The number under which purchasing orders it. */
		ARTICLE
	}

	/** Of what it can be demanded. */
	public enum On {
		/** A device, on a network or off it. */
		DEVICE,
		/** A fitting of a backbone or a drop: terminator, tee, tap and the like; for an article every part of a catalog. */
		PART,
		/** A feed of a network through a port. */
		FEED;

		/** Whether there is such a thing to say of it. */
		public boolean takes(What what) {
			return this == PART || what == What.LABEL || this == DEVICE && what == What.PLACE;
		}
	}
}
