/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import java.util.List;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/**
 * The window: its size, its bars, and a title that says which file of which boat is open.
 */
final class MainWindow extends WorkbenchWindowAdvisor {

	private static final String PRODUCT = "Hullwright";

	/** Menu entries and buttons of the platform that nobody misses who writes boats. */
	private static final List<String> FOR_PROGRAMMERS = List.of("org.eclipse.ui.actionSet.keyBindings",
			"org.eclipse.ui.edit.text.actionSet.convertLineDelimitersTo", "org.eclipse.ui.edit.text.actionSet.presentation");

	MainWindow(IWorkbenchWindowConfigurer configurer) {
		super(configurer);
	}

	@Override
	public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
		return new MainMenu(configurer);
	}

	@Override
	public void preWindowOpen() {
		IWorkbenchWindowConfigurer window = getWindowConfigurer();
		window.setInitialSize(new Point(1280, 820));
		window.setTitle(PRODUCT);
		window.setShowCoolBar(true);
		window.setShowStatusLine(true);
		window.setShowProgressIndicator(true);
		// One arrangement only, so a switch between arrangements would be a button without a use.
		window.setShowPerspectiveBar(false);
		window.getWindow().getPartService().addPartListener(new IPartListener2() {
			@Override
			public void partActivated(IWorkbenchPartReference part) {
				nameWindow();
			}

			@Override
			public void partBroughtToTop(IWorkbenchPartReference part) {
				nameWindow();
			}

			@Override
			public void partClosed(IWorkbenchPartReference part) {
				nameWindow();
			}

			@Override
			public void partInputChanged(IWorkbenchPartReference part) {
				nameWindow();
			}
		});
	}

	@Override
	public void postWindowOpen() {
		IWorkbenchPage page = getWindowConfigurer().getWindow().getActivePage();
		for (String set : FOR_PROGRAMMERS) {
			page.hideActionSet(set);
		}
	}

	private void nameWindow() {
		IWorkbenchPage page = getWindowConfigurer().getWindow().getActivePage();
		IEditorPart editor = page == null ? null : page.getActiveEditor();
		getWindowConfigurer().setTitle(editor == null ? PRODUCT : name(editor) + " \u2013 " + PRODUCT);
	}

	private static String name(IEditorPart editor) {
		IEditorInput input = editor.getEditorInput();
		IResource file = Adapters.adapt(input, IResource.class);
		return file == null ? input.getName() : file.getName() + " \u2013 " + file.getProject().getName();
	}
}
