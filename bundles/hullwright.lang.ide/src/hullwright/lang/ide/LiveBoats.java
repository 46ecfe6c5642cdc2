/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.WantedBoats;
import hullwright.network.Boat;
import hullwright.network.BoatSeries;
import hullwright.rules.Finding;
import hullwright.rules.report.ReportedFinding;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * The boat in view: one boat of the series that somebody is at work on, kept up to date with the texts. It is checked before all
 * other boats of its series.
 *
 * <p>Its methods may be called by any thread; listeners are called by the thread that checks.
 */
public final class LiveBoats {

	private final Checker checker;
	private final Consumer<Path> recheck;
	private final List<Consumer<LiveBoat>> listeners = new CopyOnWriteArrayList<>();
	private final Map<SeriesOfProject, WantedBoats> wishes = new HashMap<>();
	/** The file and the series last seen in a project. */
	private final Map<Path, String> fileOf = new HashMap<>();
	private final Map<Path, String> seriesOf = new HashMap<>();
	private Path project;
	private volatile LiveBoat current;

	/** A series by its name; projects may have series of the same name. */
	private record SeriesOfProject(Path project, String series) {
	}

	/**
	 * @param checker the engine
	 * @param recheck has a project checked soon
	 */
	LiveBoats(Checker checker, Consumer<Path> recheck) {
		this.checker = checker;
		this.recheck = recheck;
	}

	/** Has somebody told whenever the boat in view changes, or another comes into view. */
	public void listen(Consumer<LiveBoat> listener) {
		listeners.add(listener);
	}

	/** Tells no more. */
	public void leave(Consumer<LiveBoat> listener) {
		listeners.remove(listener);
	}

	/** The boat in view, once there is one. */
	public Optional<LiveBoat> current() {
		return Optional.ofNullable(current);
	}

	/** Brings the series of a file into view; the file of a catalog or profile leaves the series of its project in view. */
	void show(Path folder, String file) {
		synchronized (this) {
			if (folder.equals(project) && file.equals(fileOf.get(folder))) {
				return;
			}
			project = folder;
			fileOf.put(folder, file);
		}
		recheck.accept(folder);
	}

	/** Brings one boat of a series of the project in view into view. */
	public void choose(String series, WantedBoats boat) {
		Path folder;
		synchronized (this) {
			if (project == null) {
				return;
			}
			folder = project;
			wishes.put(new SeriesOfProject(folder, series), boat);
			seriesOf.put(folder, series);
		}
		recheck.accept(folder);
	}

	/** Which boat of a series of the project in view is asked for. */
	public synchronized WantedBoats wanted(String series) {
		return wishes.getOrDefault(new SeriesOfProject(project, series), new WantedBoats.Plainest());
	}

	/** Looks at a project that has changed; does nothing if its boats are not in view. */
	void update(Path folder, Snapshot snapshot, BooleanSupplier cancelled) {
		String file;
		String earlier;
		synchronized (this) {
			if (!folder.equals(project)) {
				return;
			}
			file = fileOf.getOrDefault(folder, "");
			earlier = seriesOf.get(folder);
		}
		BoatsRead outline = read(snapshot, file, new WantedBoats.Plainest());
		String focus = file;
		if (outline.series().isEmpty() && outline.problems().isEmpty()) {
			focus = "";
			outline = read(snapshot, "", new WantedBoats.Plainest());
		}
		BoatsRead plainest = outline;
		Optional<BoatSeries> series = pick(plainest.series(), earlier);
		if (series.isEmpty()) {
			tell(unreadable(folder, outline));
			return;
		}
		synchronized (this) {
			seriesOf.put(folder, series.get().name());
		}
		WantedBoats wish = wanted(series.get().name());
		BoatsRead wished = wish instanceof WantedBoats.Plainest ? outline : read(snapshot, focus, wish);
		WantedBoats shown = boat(wished, series.get()).isPresent() ? wish : new WantedBoats.Plainest();
		Optional<Boat> boat = boat(wished, series.get()).or(() -> boat(plainest, series.get()));
		List<Finding> findings = boat.isEmpty() ? List.of()
				: checker.check(request(snapshot, focus, shown), cancelled).findings().stream()
						.filter(reported -> reported.occurrence().series().equals(series.get().name())).map(ReportedFinding::finding).toList();
		tell(LiveBoat.of(folder, outline.series(), series, boat, findings, shown == wish ? List.of() : wished.gaps()));
	}

	private static Optional<Boat> boat(BoatsRead read, BoatSeries series) {
		return read.boats().stream().filter(each -> each.series().equals(series.name())).findFirst();
	}

	/** The one of before if it is still there, else the first. */
	private static Optional<BoatSeries> pick(List<BoatSeries> series, String earlier) {
		return series.stream().filter(each -> each.name().equals(earlier)).findFirst().or(() -> series.stream().findFirst());
	}

	/** Nothing that can be drawn: the last boat of the same project stays, with a word why. */
	private LiveBoat unreadable(Path folder, BoatsRead read) {
		LiveBoat before = current;
		String why = read.problems().stream().findFirst()
				.map(problem -> "line " + problem.origin().line() + " of " + problem.origin().file() + ": " + problem.message()).orElse("");
		if (why.isEmpty() || before == null || !before.folder().equals(folder) || before.boat().isEmpty()) {
			return LiveBoat.of(folder, List.of(), Optional.empty(), Optional.empty(), List.of(), why.isEmpty() ? List.of() : List.of(why));
		}
		return before.outdated(why);
	}

	private BoatsRead read(Snapshot snapshot, String file, WantedBoats wanted) {
		return checker.boats(request(snapshot, file, wanted));
	}

	private static CheckRequest request(Snapshot snapshot, String file, WantedBoats wanted) {
		return new CheckRequest(snapshot, file.isEmpty() ? Set.of() : Set.of(file), wanted, LocalDate.now());
	}

	private void tell(LiveBoat boat) {
		current = boat;
		listeners.forEach(listener -> listener.accept(boat));
	}
}
