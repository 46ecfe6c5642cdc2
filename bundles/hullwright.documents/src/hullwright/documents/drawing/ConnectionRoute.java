/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The way of a line that leaves its place: up into the channel above its deck, along it, where the deck changes through a gap
 * between two columns, and down to the other end.
 */
final class ConnectionRoute {

	/** Tells where a track lies. */
	@FunctionalInterface
	interface Tracks {
		/** The coordinate of a track in a gap or a channel. */
		double at(int number, int track);
	}

	private final Connection line;
	private final DrawnPlace from;
	private final DrawnPlace to;
	private final int gap;
	private final int gapTrack;
	private double gapX;
	private Rise start;
	private Rise end;
	private int fromTrack;
	private int toTrack;

	/** Where a line rises: its end at a card or port, and how far right it goes up. */
	private record Rise(Card card, int slot, Stop stop, double x) {
		Point end() {
			return card == null ? new Point(x, stop.top()) : new Point(card.extent.right(), card.extent.y() + 12 + slot % 4 * 9);
		}
	}

	ConnectionRoute(Connection line, TrackAllocation[] gaps) {
		this.line = line;
		from = line.stop != null ? line.stop.place : line.from.place;
		to = line.toStop != null ? line.toStop.place : line.to.place;
		if (from.row == to.row) {
			gap = -1;
			gapTrack = 0;
		} else {
			gap = to.column > from.column ? to.column : to.column + 1;
			gapTrack = gaps[gap].track(from.row, to.row);
		}
	}

	/** Finds where both ends rise. To be called once for each line, in their order: each takes the next place beside its card. */
	void findRise(Tracks gapTracks) {
		start = line.stop != null ? new Rise(null, 0, line.stop, line.port.x) : besideCard(line.from);
		end = line.toStop != null ? new Rise(null, 0, line.toStop, line.toPort.x) : besideCard(line.to);
		gapX = gap < 0 ? start.x : gapTracks.at(gap, gapTrack);
	}

	/** The lines of the topmost card rise next to the stack, those of lower ones farther out, so that none crosses another. */
	private static Rise besideCard(Card card) {
		int before = 0;
		List<Card> stack = card.stack.cards;
		for (int i = stack.size() - 1; stack.get(i) != card; i--) {
			before += stack.get(i).ends;
		}
		int slot = card.taken++;
		return new Rise(card, slot, null, card.stack.x + Card.WIDTH + (before + slot + 1) * CardStack.TRACK);
	}

	/** How far it goes along the boat. */
	double reach() {
		return Math.abs(start.x - gapX) + Math.abs(end.x - gapX) + (gap < 0 ? Math.abs(start.x - end.x) : 0);
	}

	void takeChannels(TrackAllocation[] channels) {
		if (gap < 0) {
			fromTrack = channels[from.row].track(start.x, end.x);
			toTrack = fromTrack;
		} else {
			fromTrack = channels[from.row].track(start.x, gapX);
			toTrack = channels[to.row].track(gapX, end.x);
		}
	}

	void lay(Tracks channelTracks) {
		List<Point> course = new ArrayList<>();
		double fromY = channelTracks.at(from.row, fromTrack);
		double toY = channelTracks.at(to.row, toTrack);
		rise(start, course);
		course.add(new Point(start.x, fromY));
		if (gap >= 0) {
			course.add(new Point(gapX, fromY));
			course.add(new Point(gapX, toY));
		}
		course.add(new Point(end.x, toY));
		List<Point> last = new ArrayList<>();
		rise(end, last);
		for (int i = last.size() - 1; i >= 0; i--) {
			course.add(last.get(i));
		}
		line.course = course;
	}

	private static void rise(Rise rise, List<Point> course) {
		course.add(rise.end());
		if (rise.card != null) {
			course.add(new Point(rise.x, rise.end().y()));
		}
	}
}
