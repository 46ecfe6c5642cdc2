/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.views.markers.MarkerSupportView;

/**
 * What is wrong with the saved boats, worst first, each with its rule. The platform's own list of markers, with our columns.
 */
public final class FindingsView extends MarkerSupportView {

	/** The id under which plugin.xml declares this view. */
	public static final String ID = "hullwright.workbench.findings";

	/** Made by the workbench. */
	public FindingsView() {
		super("hullwright.workbench.findings.content");
	}

	@Override
	public void setContentDescription(String description) {
		super.setContentDescription(nothingFound() ? "Nothing is wrong with the saved text of any open project." : description);
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
