/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import java.time.LocalDate;
import java.util.Set;

/**
 * What is to be checked.
 *
 * @param snapshot the files of the project
 * @param focus the files whose series and problems are of interest, by path; empty for all
 * @param boats which boats
 * @param asOf the date to take for today
 */
public record CheckRequest(Snapshot snapshot, Set<String> focus, WantedBoats boats, LocalDate asOf) {

	public CheckRequest {
		focus = Set.copyOf(focus);
	}

	/** All boats of all files. */
	public static CheckRequest ofAll(Snapshot snapshot, LocalDate asOf) {
		return new CheckRequest(snapshot, Set.of(), new WantedBoats.All(), asOf);
	}

	/** The same for another state of the files. */
	CheckRequest on(Snapshot other) {
		return new CheckRequest(other, focus, boats, asOf);
	}
}
