/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.analysis.Figures;
import hullwright.network.Boat;
import hullwright.network.BoatSeries;
import hullwright.rules.Finding;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The boat in view as the texts say it now, unsaved ones included.
 *
 * <p>When the texts cannot be read, {@link #boat()} is the last one that could be, and {@link #outdated()} says why.
 */
public final class LiveBoat {

	private final Path folder;
	private final List<BoatSeries> offered;
	private final Optional<BoatSeries> series;
	private final Optional<Boat> boat;
	private final List<Finding> findings;
	private final List<String> notes;
	private final Optional<String> outdated;
	private final Figures figures;

	private LiveBoat(Path folder, List<BoatSeries> offered, Optional<BoatSeries> series, Optional<Boat> boat, List<Finding> findings,
			List<String> notes, Optional<String> outdated, Figures figures) {
		this.folder = folder;
		this.offered = List.copyOf(offered);
		this.series = series;
		this.boat = boat;
		this.findings = List.copyOf(findings);
		this.notes = List.copyOf(notes);
		this.outdated = outdated;
		this.figures = figures;
	}

	/** A boat that could be read. */
	static LiveBoat of(Path folder, List<BoatSeries> offered, Optional<BoatSeries> series, Optional<Boat> boat, List<Finding> findings,
			List<String> notes) {
		return new LiveBoat(folder, offered, series, boat, findings, notes, Optional.empty(), boat.map(Figures::new).orElse(null));
	}

	/** The same boat, now that the texts cannot be read. */
	LiveBoat outdated(String why) {
		return new LiveBoat(folder, offered, series, boat, findings, notes, Optional.of(why), figures);
	}

	/** The folder of its project. */
	public Path folder() {
		return folder;
	}

	/** The series of the file in view, or of the project where that file has none. */
	public List<BoatSeries> offered() {
		return offered;
	}

	/** The series that the boat is of, if there is any. */
	public Optional<BoatSeries> series() {
		return series;
	}

	/** The boat, if there is one. */
	public Optional<Boat> boat() {
		return boat;
	}

	/** What was found on this boat. */
	public List<Finding> findings() {
		return findings;
	}

	/** Why it is not the boat that was asked for, in words; empty if it is. */
	public List<String> notes() {
		return notes;
	}

	/** Why the texts as they are now show no boat, so that this is an earlier one. */
	public Optional<String> outdated() {
		return outdated;
	}

	/**
	 * Looks at the figures of the boat. They are computed as they are asked for, which may take a while, by one thread at a time.
	 *
	 * @return what the look gave, or nothing without a boat
	 */
	public <T> Optional<T> figures(Function<Figures, T> look) {
		if (figures == null) {
			return Optional.empty();
		}
		synchronized (figures) {
			return Optional.of(look.apply(figures));
		}
	}
}
