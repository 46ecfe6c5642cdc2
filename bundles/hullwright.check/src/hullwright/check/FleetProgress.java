/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

/**
 * Counts the boats of all series of a check, series by series.
 */
final class FleetProgress {

	private final CheckObserver observer;
	private final int boats;
	private int before;

	/** @param boats how many there are in all */
	FleetProgress(CheckObserver observer, int boats) {
		this.observer = observer;
		this.boats = boats;
	}

	/** So many boats of the series at hand are done. */
	void within(int series) {
		observer.progress(before + series, boats);
	}

	/** The series at hand, of so many boats, is done. */
	void done(int series) {
		before += series;
		observer.progress(before, boats);
	}
}
