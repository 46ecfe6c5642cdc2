/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.check.BoatsRead;
import hullwright.check.CheckObserver;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.WantedBoats;
import hullwright.network.Boat;
import hullwright.network.BoatSeries;
import hullwright.rules.Finding;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
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
	private final List<Consumer<AllBoats>> listenersToAll = new CopyOnWriteArrayList<>();
	private final Map<SeriesOfProject, WantedBoats> wishes = new HashMap<>();
	/** The file and the series last seen in a project. */
	private final Map<Path, String> fileOf = new HashMap<>();
	private final Map<Path, String> seriesOf = new HashMap<>();
	private Path project;
	private volatile LiveBoat current;
	private volatile AllBoats all;

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

	/** Has somebody told how far the check of all boats is, for the project of the boat in view. */
	public void listenToAll(Consumer<AllBoats> listener) {
		listenersToAll.add(listener);
	}

	/** How far the check of all boats of the project in view is, once it has begun. */
	public Optional<AllBoats> all() {
		return Optional.ofNullable(all);
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

	/** Takes what is in a folder out of view, since it is gone. */
	void forget(Path folder) {
		Path gone;
		synchronized (this) {
			if (project == null || !project.startsWith(folder)) {
				return;
			}
			gone = project;
			project = null;
			all = null;
		}
		tell(LiveBoat.of(gone, List.of(), Optional.empty(), Optional.empty(), List.of(), List.of()));
	}

	/** The check of the one boat in view. */
	record Checked(CheckRequest request, CheckReport report) {
	}

	/**
	 * Looks at a project that has changed; does nothing if its boats are not in view.
	 *
	 * @return the check of the boat in view, if there is one
	 */
	Optional<Checked> update(Path folder, Snapshot snapshot, CheckObserver observer) {
		String file;
		String earlier;
		synchronized (this) {
			if (!folder.equals(project)) {
				return Optional.empty();
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
			return Optional.empty();
		}
		synchronized (this) {
			seriesOf.put(folder, series.get().name());
		}
		WantedBoats wish = wanted(series.get().name());
		BoatsRead wished = wish instanceof WantedBoats.Plainest ? outline : read(snapshot, focus, wish);
		WantedBoats shown = boat(wished, series.get()).isPresent() ? wish : new WantedBoats.Plainest();
		Optional<Boat> boat = boat(wished, series.get()).or(() -> boat(plainest, series.get()));
		Optional<Checked> checked = boat.isEmpty() ? Optional.empty() : Optional.of(request(snapshot, focus, shown))
				.map(request -> new Checked(request, checker.check(request, observer)));
		List<Finding> findings = checked.stream().flatMap(each -> each.report().findings().stream())
				.filter(reported -> reported.occurrence().series().equals(series.get().name())).map(ReportedFinding::finding).toList();
		tell(LiveBoat.of(folder, outline.series(), series, boat, findings, shown == wish ? List.of() : wished.gaps()));
		return checked;
	}

	/** The check of all boats of a project goes on. */
	void progress(Path folder, int checked, int boats) {
		tellAll(folder, checked, boats, Optional.ofNullable(all).filter(before -> before.folder().equals(folder)).flatMap(AllBoats::report));
	}

	/** All boats of a project have been checked. */
	void checked(Path folder, CheckReport report) {
		int boats = report.series().stream().mapToInt(each -> each.combinations() + each.hulls()).sum();
		tellAll(folder, boats, boats, Optional.of(report));
	}

	private void tellAll(Path folder, int checked, int boats, Optional<CheckReport> report) {
		synchronized (this) {
			if (!folder.equals(project)) {
				return;
			}
			all = new AllBoats(folder, checked, boats, report);
		}
		listenersToAll.forEach(listener -> listener.accept(all));
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
