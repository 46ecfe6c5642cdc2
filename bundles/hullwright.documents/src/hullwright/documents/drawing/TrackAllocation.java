/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Gives lines that run side by side in a channel a track each, as few as possible: the first track that is free over the whole
 * interval. Asked in the same order it gives the same answer.
 */
final class TrackAllocation {

	private record Interval(double from, double to) {
		boolean meets(Interval other) {
			return from <= other.to && other.from <= to;
		}
	}

	private final List<List<Interval>> tracks = new ArrayList<>();

	/** The number of the track for an interval, from 0. */
	int track(double oneEnd, double otherEnd) {
		Interval wanted = new Interval(Math.min(oneEnd, otherEnd), Math.max(oneEnd, otherEnd));
		for (int i = 0; i < tracks.size(); i++) {
			if (tracks.get(i).stream().noneMatch(wanted::meets)) {
				tracks.get(i).add(wanted);
				return i;
			}
		}
		tracks.add(new ArrayList<>(List.of(wanted)));
		return tracks.size() - 1;
	}

	/** How many tracks are in use. */
	int count() {
		return tracks.size();
	}
}
