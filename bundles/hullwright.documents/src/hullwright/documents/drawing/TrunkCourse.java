/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Point;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The way of a backbone from place to place: straight along its lane where nothing of its own is in the way, through a gap where it
 * changes the deck, and else over the channel above.
 */
final class TrunkCourse {

	private static final double STEP_OUT = 8;

	private final Trunk trunk;
	private final ConnectionRoute.Tracks gapTracks;
	private final TrackAllocation[] channels;
	private final Map<Trunk.Crossing, int[]> overTheChannel = new HashMap<>();
	private final Map<Integer, List<double[]>> taken = new HashMap<>();

	TrunkCourse(Trunk trunk, ConnectionRoute.Tracks gapTracks, TrackAllocation[] channels) {
		this.trunk = trunk;
		this.gapTracks = gapTracks;
		this.channels = channels;
	}

	/** Decides where each crossing goes; widths are known by now. */
	void choose() {
		for (Trunk.Crossing crossing : trunk.crossings) {
			double from = leaves(crossing);
			double to = enters(crossing);
			int row = crossing.from.place.row;
			int otherRow = crossing.to.place.row;
			if (crossing.changesDeck()) {
				double gap = gapTracks.at(crossing.gap, crossing.track);
				if (!isTaken(row, from, gap) && !isTaken(otherRow, gap, to) && isOutward(crossing)) {
					take(row, from, gap);
					take(otherRow, gap, to);
				} else {
					overTheChannel.put(crossing, new int[] { channels[row].track(riseX(crossing), gap), channels[otherRow].track(gap, fallX(crossing)) });
				}
			} else if (!isTaken(row, from, to) && isOutward(crossing)) {
				take(row, from, to);
			} else {
				int track = channels[row].track(riseX(crossing), fallX(crossing));
				overTheChannel.put(crossing, new int[] { track, track });
			}
		}
	}

	/** Whether the line leaves and enters at the outer ends of both stretches and not back over their own parts. */
	private static boolean isOutward(Trunk.Crossing crossing) {
		return crossing.from.rightwards == (crossing.exit == Stay.Side.RIGHT) && crossing.to.rightwards == (crossing.entry == Stay.Side.LEFT);
	}

	private boolean isTaken(int row, double from, double to) {
		double low = Math.min(from, to);
		double high = Math.max(from, to);
		boolean overAnotherLine = taken.getOrDefault(row, List.of()).stream().anyMatch(other -> other[0] < high && low < other[1]);
		return overAnotherLine || trunk.stays.stream().filter(stay -> stay.place.row == row).flatMap(stay -> stay.stops.stream())
				.anyMatch(stop -> stop.x > low + 0.5 && stop.x < high - 0.5);
	}

	private void take(int row, double from, double to) {
		taken.computeIfAbsent(row, none -> new ArrayList<>()).add(new double[] { Math.min(from, to), Math.max(from, to) });
	}

	private static double leaves(Trunk.Crossing crossing) {
		Stop last = crossing.from.last();
		return crossing.from.rightwards ? last.right() : last.left();
	}

	private static double enters(Trunk.Crossing crossing) {
		Stop first = crossing.to.first();
		return crossing.to.rightwards ? first.left() : first.right();
	}

	private static double riseX(Trunk.Crossing crossing) {
		return leaves(crossing) + (crossing.from.rightwards ? STEP_OUT : -STEP_OUT);
	}

	private static double fallX(Trunk.Crossing crossing) {
		return enters(crossing) + (crossing.to.rightwards ? -STEP_OUT : STEP_OUT);
	}

	void lay(ConnectionRoute.Tracks channelTracks) {
		for (Trunk.Crossing crossing : trunk.crossings) {
			Point from = new Point(leaves(crossing), crossing.from.last().y);
			Point to = new Point(enters(crossing), crossing.to.first().y);
			List<Point> course = new ArrayList<>(List.of(from));
			int[] over = overTheChannel.get(crossing);
			if (over != null) {
				double fromY = channelTracks.at(crossing.from.place.row, over[0]);
				double toY = channelTracks.at(crossing.to.place.row, over[1]);
				course.add(new Point(riseX(crossing), from.y()));
				course.add(new Point(riseX(crossing), fromY));
				if (crossing.changesDeck()) {
					double gap = gapTracks.at(crossing.gap, crossing.track);
					course.add(new Point(gap, fromY));
					course.add(new Point(gap, toY));
				}
				course.add(new Point(fallX(crossing), toY));
				course.add(new Point(fallX(crossing), to.y()));
			} else if (crossing.changesDeck()) {
				double gap = gapTracks.at(crossing.gap, crossing.track);
				course.add(new Point(gap, from.y()));
				course.add(new Point(gap, to.y()));
			}
			course.add(to);
			crossing.course = course;
		}
	}
}
