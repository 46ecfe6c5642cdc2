/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.scene;

/**
 * How a line is drawn.
 *
 * @param ink its colour
 * @param width its width
 * @param dash whether it is broken
 */
public record Stroke(Ink ink, double width, Dash dash) {

	/** How a line is broken, so that its kind can be told without colours. */
	public enum Dash {
		/** Not at all: a cable of the network, or an edge. */
		NONE,
		/** In long pieces: a serial line. */
		LONG,
		/** In dots: a radio link. */
		DOTS,
		/** In short pieces: not there yet. */
		SHORT;

		/** The lengths of line and gap in turn, in widths of the line; empty for an unbroken line. */
		public double[] pieces() {
			return switch (this) {
			case NONE -> new double[0];
			case LONG -> new double[] { 5, 3 };
			case DOTS -> new double[] { 1, 3 };
			case SHORT -> new double[] { 3, 3 };
			};
		}
	}

	/** An unbroken line. */
	public static Stroke of(Ink ink, double width) {
		return new Stroke(ink, width, Dash.NONE);
	}
}
