/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.views.markers.MarkerSupportView;

/**
 * What is wrong with the saved boats, worst first, each with its rule. The platform's own list of markers, with our columns.
 */
public final class FindingsView extends MarkerSupportView {

	/** The id under which plugin.xml declares this view. */
	public static final String ID = "hullwright.workbench.findings";

	/** More projects than this are counted rather than named. */
	private static final int NAMED = 4;

	private final IResourceChangeListener projects = this::followProjects;
	private String described = "";
	private boolean disposed;

	/** Made by the workbench. */
	public FindingsView() {
		super("hullwright.workbench.findings.content");
	}

	@Override
	public void createPartControl(Composite parent) {
		super.createPartControl(parent);
		ResourcesPlugin.getWorkspace().addResourceChangeListener(projects, IResourceChangeEvent.POST_CHANGE);
	}

	@Override
	public void dispose() {
		disposed = true;
		ResourcesPlugin.getWorkspace().removeResourceChangeListener(projects);
		super.dispose();
	}

	/** Where nothing is found, which projects that is said of changes with them. */
	private void followProjects(IResourceChangeEvent event) {
		boolean others = Arrays.stream(event.getDelta().getAffectedChildren())
				.anyMatch(project -> project.getKind() != IResourceDelta.CHANGED || (project.getFlags() & IResourceDelta.OPEN) != 0);
		if (others) {
			UiThread.later(() -> {
				if (!disposed) {
					setContentDescription(described);
				}
			});
		}
	}

	@Override
	public void setContentDescription(String description) {
		described = description;
		super.setContentDescription(nothingFound() ? allIsWell() : description);
	}

	/** What was checked, where nothing is wrong with it. */
	private static String allIsWell() {
		List<String> projects = Arrays.stream(ResourcesPlugin.getWorkspace().getRoot().getProjects()).filter(IProject::isOpen).map(IProject::getName).toList();
		if (projects.isEmpty()) {
			return "There is no open project to check. File, New, Yard project makes one.";
		}
		String names = projects.size() > NAMED ? projects.size() + " open projects" : String.join(", ", projects);
		return "All is well: every boat that can be ordered and every sold hull of " + names + " keeps the rules in force, as far as the text is saved.";
	}

	private static boolean nothingFound() {
		try {
			return ResourcesPlugin.getWorkspace().getRoot().findMarkers(FindingMarkers.TYPE, true, IResource.DEPTH_INFINITE).length == 0;
		} catch (CoreException e) {
			// a project was closed meanwhile; the list is about to be written again
			return false;
		}
	}
}
