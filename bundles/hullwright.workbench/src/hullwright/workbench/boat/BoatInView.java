/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.boat;

import hullwright.check.WantedBoats;
import hullwright.lang.ide.AllBoats;
import hullwright.lang.ide.LiveBoat;
import hullwright.lang.ide.LiveBoats;
import hullwright.workbench.live.LanguageService;
import hullwright.workbench.live.UiThread;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/**
 * The one boat that the views of this workbench show: that of the text in the active editor, with the options or the hull that
 * somebody chose. To be used by the UI thread.
 */
public final class BoatInView {

	private static BoatInView running;

	private final List<Consumer<LiveBoat>> views = new CopyOnWriteArrayList<>();
	private final List<Consumer<AllBoats>> viewsOfAll = new CopyOnWriteArrayList<>();
	private LiveBoats boats;
	private LiveBoat current;

	private BoatInView() {
	}

	/** It starts to look when it is first asked for. */
	public static BoatInView get() {
		if (running == null) {
			running = new BoatInView();
			running.start();
		}
		return running;
	}

	private void start() {
		LanguageService.get().boats().thenAccept(server -> {
			if (server != null) {
				UiThread.later(() -> {
					boats = server;
					server.listen(boat -> UiThread.later(() -> show(boat)));
					server.listenToAll(all -> UiThread.later(() -> viewsOfAll.forEach(view -> view.accept(all))));
					server.current().ifPresent(this::show);
					server.all().ifPresent(all -> viewsOfAll.forEach(view -> view.accept(all)));
				});
			}
		});
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		if (window != null) {
			window.getPartService().addPartListener(new IPartListener2() {
				@Override
				public void partActivated(IWorkbenchPartReference part) {
					follow(part.getPage());
				}

				@Override
				public void partBroughtToTop(IWorkbenchPartReference part) {
					follow(part.getPage());
				}

				@Override
				public void partInputChanged(IWorkbenchPartReference part) {
					follow(part.getPage());
				}
			});
			if (window.getActivePage() != null) {
				follow(window.getActivePage());
			}
		}
	}

	private static void follow(IWorkbenchPage page) {
		IEditorPart editor = page.getActiveEditor();
		IFile file = editor == null ? null : Adapters.adapt(editor.getEditorInput(), IFile.class);
		if (file != null && "hull".equals(file.getFileExtension()) && file.getLocation() != null) {
			LanguageService.get().show(Path.of(file.getLocationURI()).toAbsolutePath().normalize());
		}
	}

	private void show(LiveBoat boat) {
		current = boat;
		views.forEach(view -> view.accept(boat));
	}

	/** Has a view told of the boat, now if there is one, and whenever it changes. */
	public void join(Consumer<LiveBoat> view) {
		views.add(view);
		if (current != null) {
			view.accept(current);
		}
	}

	/** Has a view told, too, how far the check of all boats is and what it found. */
	public void joinAll(Consumer<AllBoats> view) {
		viewsOfAll.add(view);
		all().ifPresent(view);
	}

	/** Tells a view no more about all boats. */
	public void leaveAll(Consumer<AllBoats> view) {
		viewsOfAll.remove(view);
	}

	/** How far the check of all boats is, once it has begun. */
	public Optional<AllBoats> all() {
		return boats == null ? Optional.empty() : boats.all();
	}

	/** Tells a view no more. */
	public void leave(Consumer<LiveBoat> view) {
		views.remove(view);
	}

	/** The boat, once there is one. */
	public Optional<LiveBoat> current() {
		return Optional.ofNullable(current);
	}

	/** Brings another boat of a series into view. */
	public void choose(String series, WantedBoats boat) {
		if (boats != null) {
			boats.choose(series, boat);
		}
	}

	/** Which boat of a series is asked for. */
	public WantedBoats wanted(String series) {
		return boats == null ? new WantedBoats.Plainest() : boats.wanted(series);
	}
}
