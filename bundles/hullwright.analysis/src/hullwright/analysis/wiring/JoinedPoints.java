/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Which points a conductor joins.
 *
 * @param first by point, the first of all points that it is joined with, itself if it is the first
 */
public record JoinedPoints(int[] first) {

	/**
	 * The points that some of the spans of a wiring join.
	 *
	 * @param joins whether the span of a number does
	 */
	public static JoinedPoints of(Wiring wiring, IntPredicate joins) {
		int[] root = new int[wiring.points()];
		Arrays.setAll(root, point -> point);
		for (int i = 0; i < wiring.spans().size(); i++) {
			if (joins.test(i)) {
				int one = find(root, wiring.spans().get(i).from());
				int other = find(root, wiring.spans().get(i).to());
				root[Math.max(one, other)] = Math.min(one, other);
			}
		}
		Arrays.setAll(root, point -> find(root, point));
		return new JoinedPoints(root);
	}

	/** The first of all points that a point is joined with. */
	public int first(int point) {
		return first[point];
	}

	/** Whether two points are joined. */
	public boolean joined(int one, int other) {
		return first[one] == first[other];
	}

	private static int find(int[] root, int point) {
		int at = point;
		while (root[at] != at) {
			root[at] = root[root[at]];
			at = root[at];
		}
		return at;
	}
}
