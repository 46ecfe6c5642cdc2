/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.scene;

/**
 * A rectangle of a picture.
 *
 * @param x its left side
 * @param y its upper side
 * @param width its width
 * @param height its height
 */
public record Extent(double x, double y, double width, double height) {

	/** Its right side. */
	public double right() {
		return x + width;
	}

	/** Its lower side. */
	public double bottom() {
		return y + height;
	}

	/** Whether a place lies in it. */
	public boolean contains(double atX, double atY) {
		return atX >= x && atX <= right() && atY >= y && atY <= bottom();
	}

	/** The smallest that holds both. */
	public Extent with(Extent other) {
		double left = Math.min(x, other.x);
		double top = Math.min(y, other.y);
		return new Extent(left, top, Math.max(right(), other.right()) - left, Math.max(bottom(), other.bottom()) - top);
	}

	/** The same with a margin all around. */
	public Extent grown(double margin) {
		return new Extent(x - margin, y - margin, width + 2 * margin, height + 2 * margin);
	}
}
