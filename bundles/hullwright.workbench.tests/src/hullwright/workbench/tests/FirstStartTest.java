/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.workbench.live.FindingsView;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IViewReference;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.navigator.resources.ProjectExplorer;
import org.eclipse.ui.part.FileEditorInput;
import org.junit.jupiter.api.Test;

/**
 * What a person finds who starts Hullwright for the first time.
 */
class FirstStartTest {

	private static final IProject EXAMPLE = ResourcesPlugin.getWorkspace().getRoot().getProject("harbour-pilot");

	@Test
	void theExampleIsThere() {
		Window.until("the example has its series, its catalog and its profile",
				() -> List.of(EXAMPLE.getFile("fabelholm-38.hull"), EXAMPLE.getFile("house-kit.hull"), EXAMPLE.getFile("yard.hull")),
				files -> files.stream().allMatch(IFile::exists));
	}

	@Test
	void theSeriesOfTheExampleIsOpenAndNamesTheWindow() {
		Window.until("an editor shows the series",
				() -> Arrays.stream(Window.page().getEditorReferences()).map(editor -> editor.getName()).toList(),
				names -> names.contains("fabelholm-38.hull"));
		Window.ui(() -> {
			Window.page().activate(Window.page().findEditor(new FileEditorInput(EXAMPLE.getFile("fabelholm-38.hull"))));
			return null;
		});
		Window.until("the title names file, project and product",
				() -> PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell().getText(),
				"fabelholm-38.hull \u2013 harbour-pilot \u2013 Hullwright"::equals);
	}

	@Test
	void projectsOutlineAndFindingsAreInView() {
		List<String> views = Window.ui(() -> Arrays.stream(Window.page().getViewReferences()).map(IViewReference::getId).toList());
		assertTrue(views.containsAll(List.of(ProjectExplorer.VIEW_ID, IPageLayout.ID_OUTLINE, FindingsView.ID)), views.toString());
	}
}
