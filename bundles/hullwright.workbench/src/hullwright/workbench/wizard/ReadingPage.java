/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.check.Snapshot;
import hullwright.workbench.live.ProjectText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;

/**
 * A page about a project that is there. The project is read in the background; until it is, the page cannot be finished.
 *
 * @param <T> what is looked for in the project
 */
abstract class ReadingPage<T> extends DraftPage {

	/**
	 * A project as it was read.
	 *
	 * @param text where its texts are
	 * @param snapshot its texts
	 * @param found what was looked for
	 */
	record Read<T>(ProjectText text, Snapshot snapshot, T found) {
	}

	private final List<IProject> projects = SeriesPage.openProjects();
	private final Optional<IResource> chosen;
	private Combo project;
	private Optional<Read<T>> read = Optional.empty();
	private Optional<String> failure = Optional.empty();

	ReadingPage(String name, String title, String description, Optional<IResource> chosen) {
		super(name, title, description);
		this.chosen = chosen;
	}

	@Override
	final void createFields(Composite parent) {
		project = combo("Project", projects.stream().map(IProject::getName).toList());
		Writing.project(chosen).ifPresent(each -> project.select(projects.indexOf(each)));
		project.addModifyListener(event -> begin());
		createMore(parent);
		begin();
	}

	/** Makes the fields below that of the project. */
	abstract void createMore(Composite parent);

	/** Looks for what the page needs. Not in the UI thread. */
	abstract T look(Snapshot snapshot);

	/** Fills the fields from what was found. */
	abstract void fill(Read<T> found);

	/** Why the values do not do, once the project is read. */
	abstract Optional<String> problem(Read<T> found);

	private void begin() {
		read = Optional.empty();
		failure = Optional.empty();
		if (projects.isEmpty()) {
			return;
		}
		IProject wanted = projects.get(project.getSelectionIndex());
		IResource place = chosen.filter(each -> wanted.equals(each.getProject())).orElse(wanted);
		Optional<ProjectText> text = ProjectText.around(place);
		if (text.isEmpty()) {
			failure = Optional.of("The project is not on this machine.");
			return;
		}
		Display display = project.getDisplay();
		CompletableFuture.supplyAsync(() -> read(text.get())).whenComplete((found, problem) -> display.asyncExec(() -> {
			if (!project.isDisposed() && wanted.equals(projects.get(project.getSelectionIndex()))) {
				arrived(found, problem);
			}
		}));
	}

	private Read<T> read(ProjectText text) {
		try {
			Snapshot snapshot = text.read();
			return new Read<>(text, snapshot, look(snapshot));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	private void arrived(Read<T> found, Throwable problem) {
		read = Optional.ofNullable(found);
		failure = problem == null ? Optional.empty() : Optional.of("The project cannot be read: " + problem.getMessage());
		read.ifPresent(this::fill);
		changed();
	}

	@Override
	final Optional<String> problem() {
		if (projects.isEmpty()) {
			return Optional.of("There is no open project. File, New, Yard project makes one.");
		}
		if (failure.isPresent()) {
			return failure;
		}
		return read.isEmpty() ? Optional.of("The project is being read.") : problem(read.get());
	}

	/** The project. Not to be asked while there is a problem. */
	final Read<T> read() {
		return read.orElseThrow();
	}

	/** The project of the workspace that is chosen. */
	final IProject project() {
		return projects.get(project.getSelectionIndex());
	}
}
