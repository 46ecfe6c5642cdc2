/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.check.baseline.Baseline;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * What is to be checked.
 *
 * @param snapshot the files of the project
 * @param focus the files whose series and problems are of interest, by path; empty for all
 * @param boats which boats
 * @param asOf the date to take for today
 * @param baseline the findings that are accepted, if there is such a list
 */
public record CheckRequest(Snapshot snapshot, Set<String> focus, WantedBoats boats, LocalDate asOf, Optional<Baseline> baseline) {

	public CheckRequest {
		focus = Set.copyOf(focus);
	}

	/** A request without a baseline. */
	public CheckRequest(Snapshot snapshot, Set<String> focus, WantedBoats boats, LocalDate asOf) {
		this(snapshot, focus, boats, asOf, Optional.empty());
	}

	/** The same, held against a baseline. */
	public CheckRequest against(Baseline accepted) {
		return new CheckRequest(snapshot, focus, boats, asOf, Optional.of(accepted));
	}

	/** All boats of all files. */
	public static CheckRequest ofAll(Snapshot snapshot, LocalDate asOf) {
		return new CheckRequest(snapshot, Set.of(), new WantedBoats.All(), asOf);
	}

	/** The same for another state of the files. */
	public CheckRequest on(Snapshot other) {
		return new CheckRequest(other, focus, boats, asOf, baseline);
	}
}
