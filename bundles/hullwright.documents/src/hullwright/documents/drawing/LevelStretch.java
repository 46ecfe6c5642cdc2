/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Point;
import java.util.List;

/**
 * Where on a line there is room to write: its longest level stretch.
 */
final class LevelStretch {

	private LevelStretch() {
	}

	/** Both ends of the longest level stretch of a course; of one that has none, those of the whole. */
	static List<Point> of(List<Point> course) {
		List<Point> best = List.of(course.get(0), course.get(course.size() - 1));
		double length = -1;
		for (int i = 1; i < course.size(); i++) {
			Point from = course.get(i - 1);
			Point to = course.get(i);
			double reach = Math.abs(to.x() - from.x());
			if (from.y() == to.y() && reach > length) {
				length = reach;
				best = List.of(from, to);
			}
		}
		return best;
	}
}
