/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import hullwright.workbench.boat.BoatsView;
import hullwright.workbench.boat.DataView;
import hullwright.workbench.boat.FiguresView;
import hullwright.workbench.boat.NetworkView;
import hullwright.workbench.catalog.CatalogView;
import hullwright.workbench.guide.GuideView;
import hullwright.workbench.live.FindingsView;
import hullwright.workbench.rulepage.RulePagesView;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.navigator.resources.ProjectExplorer;

/**
 * How the window is arranged for writing a boat: projects and boats at the left, the text, its outline, and below
 * the drawing and what is wrong.
 */
public final class BoatPerspective implements IPerspectiveFactory {

	/** The id under which plugin.xml declares this perspective. */
	public static final String ID = "hullwright.workbench.boat";

	/** The id of this bundle, for log entries and preferences. */
	static final String BUNDLE = "hullwright.workbench";

	@Override
	public void createInitialLayout(IPageLayout layout) {
		String text = layout.getEditorArea();
		layout.setEditorAreaVisible(true);
		layout.addView(ProjectExplorer.VIEW_ID, IPageLayout.LEFT, 0.18f, text);
		layout.addView(BoatsView.ID, IPageLayout.BOTTOM, 0.58f, ProjectExplorer.VIEW_ID);
		IFolderLayout pictures = layout.createFolder("pictures", IPageLayout.BOTTOM, 0.58f, text);
		pictures.addView(NetworkView.ID);
		pictures.addView(FiguresView.ID);
		pictures.addView(DataView.ID);
		pictures.addPlaceholder(CatalogView.ID);
		pictures.addPlaceholder(RulePagesView.ID);
		IFolderLayout findings = layout.createFolder("findings", IPageLayout.RIGHT, 0.62f, "pictures");
		findings.addView(FindingsView.ID);
		findings.addPlaceholder(IPageLayout.ID_PROGRESS_VIEW);
		IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.74f, text);
		right.addView(IPageLayout.ID_OUTLINE);
		right.addPlaceholder(GuideView.ID);

		layout.addShowViewShortcut(ProjectExplorer.VIEW_ID);
		layout.addShowViewShortcut(BoatsView.ID);
		layout.addShowViewShortcut(NetworkView.ID);
		layout.addShowViewShortcut(FiguresView.ID);
		layout.addShowViewShortcut(DataView.ID);
		layout.addShowViewShortcut(FindingsView.ID);
		layout.addShowViewShortcut(CatalogView.ID);
		layout.addShowViewShortcut(RulePagesView.ID);
		layout.addShowViewShortcut(IPageLayout.ID_OUTLINE);
		layout.addShowViewShortcut(GuideView.ID);
		layout.addShowViewShortcut(IPageLayout.ID_PROGRESS_VIEW);
		layout.addNewWizardShortcut("hullwright.workbench.new.project");
		layout.addNewWizardShortcut("hullwright.workbench.new.series");
		layout.addNewWizardShortcut("hullwright.workbench.new.hull");
		layout.addNewWizardShortcut("hullwright.workbench.new.part");
		layout.addNewWizardShortcut("org.eclipse.ui.wizards.new.folder");
		layout.addNewWizardShortcut("org.eclipse.ui.wizards.new.file");
	}
}
