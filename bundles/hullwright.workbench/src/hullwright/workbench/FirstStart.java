/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.navigator.resources.ProjectExplorer;
import org.eclipse.ui.part.ISetSelectionTarget;
import org.eclipse.ui.statushandlers.StatusManager;
import org.osgi.service.prefs.BackingStoreException;

/**
 * Puts the first example into an empty workspace, once: who deletes it does not get it again.
 */
final class FirstStart extends WorkspaceJob {

	private static final String DONE = "exampleOffered";

	/** The example that shows most; the others are there for whoever looks for them. */
	private static final String SHOWN_FIRST = "harbour-pilot";

	private FirstStart() {
		super("Copying the example boat");
		setRule(ResourcesPlugin.getWorkspace().getRoot());
	}

	static void scheduleOnce() {
		if (!preferences().getBoolean(DONE, false)) {
			new FirstStart().schedule();
		}
	}

	@Override
	public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
		if (ResourcesPlugin.getWorkspace().getRoot().getProjects().length == 0) {
			List<ExampleProject> examples = ExampleProject.shipped();
			Optional<ExampleProject> example = examples.stream().filter(candidate -> SHOWN_FIRST.equals(candidate.name())).findAny()
					.or(() -> examples.stream().findFirst());
			if (example.isPresent()) {
				Optional<IProject> project = example.get().copy(example.get().name(), monitor);
				if (project.isPresent()) {
					openSeries(project.get());
				}
			}
		}
		preferences().putBoolean(DONE, true);
		try {
			preferences().flush();
		} catch (BackingStoreException e) {
			return Status.warning("It could not be noted that the example was copied.", e);
		}
		return Status.OK_STATUS;
	}

	private static void openSeries(IProject project) throws CoreException {
		Optional<IFile> series = Stream.of(project.members())
				.filter(IFile.class::isInstance).map(IFile.class::cast)
				.filter(file -> "hull".equals(file.getFileExtension()))
				.max(Comparator.comparing(FirstStart::declaresSeries).thenComparing(IResource::getName));
		if (series.isPresent()) {
			IFile file = series.get();
			PlatformUI.getWorkbench().getDisplay().asyncExec(() -> open(file));
		}
	}

	private static boolean declaresSeries(IFile file) {
		try {
			return file.readString().lines().anyMatch(line -> line.startsWith("series "));
		} catch (CoreException e) {
			return false;
		}
	}

	private static void open(IFile file) {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		if (window == null && PlatformUI.getWorkbench().getWorkbenchWindowCount() > 0) {
			window = PlatformUI.getWorkbench().getWorkbenchWindows()[0];
		}
		if (window == null || window.getActivePage() == null) {
			return;
		}
		try {
			IDE.openEditor(window.getActivePage(), file);
			if (window.getActivePage().findView(ProjectExplorer.VIEW_ID) instanceof ISetSelectionTarget explorer) {
				explorer.selectReveal(new StructuredSelection(file));
			}
		} catch (PartInitException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
		}
	}

	private static IEclipsePreferences preferences() {
		return InstanceScope.INSTANCE.getNode(BoatPerspective.BUNDLE);
	}
}
