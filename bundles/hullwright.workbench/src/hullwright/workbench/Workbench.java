/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import hullwright.workbench.live.LanguageService;
import hullwright.workbench.writing.Recovery;
import hullwright.workbench.writing.UnsavedCopies;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.MultiStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;
import org.osgi.framework.FrameworkUtil;

/**
 * The life of the workbench: before the first window, after it, and at the end.
 */
final class Workbench extends WorkbenchAdvisor {

	@Override
	public void initialize(IWorkbenchConfigurer configurer) {
		super.initialize(configurer);
		configurer.setSaveAndRestore(true);
		IDE.registerAdapters();
		PlatformImages.declare(configurer);
	}

	@Override
	public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
		return new MainWindow(configurer);
	}

	@Override
	public String getInitialWindowPerspectiveId() {
		return BoatPerspective.ID;
	}

	@Override
	public String getMainPreferencePageId() {
		return "hullwright.workbench.preferences.text";
	}

	@Override
	public IAdaptable getDefaultPageInput() {
		return ResourcesPlugin.getWorkspace().getRoot();
	}

	@Override
	public void postStartup() {
		Splash.hide();
		LibraryLog.open();
		knowFindOverlay();
		LanguageService.get();
		drawFirstImage();
		FirstStart.scheduleOnce();
		PlatformUI.getWorkbench().getDisplay().asyncExec(() -> Recovery.start(PlatformUI.getWorkbench().getWorkbenchWindows()[0]));
	}

	/** The first icon that the platform draws loads so much of Java that the window would stand still, so it is drawn beforehand. */
	private static void drawFirstImage() {
		Job.createSystem("Preparing icons", monitor -> {
			PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(ISharedImages.IMG_OBJS_ERROR_TSK).getImageData(100);
		}).schedule();
	}

	/** The platform greets its own way to search with a note over the text; nobody here knew another. */
	private static void knowFindOverlay() {
		PlatformUI.getDialogSettingsProvider(FrameworkUtil.getBundle(ITextEditor.class)).getDialogSettings().put("hasShownOverlayPopupBefore", true);
	}

	@Override
	public void postShutdown() {
		// whoever closed the window was asked about what was not saved
		UnsavedCopies.ofWorkspace().forget();
		MultiStatus problems = new MultiStatus(BoatPerspective.BUNDLE, 0, "The workspace was not saved completely.", null);
		try {
			IStatus saved = ResourcesPlugin.getWorkspace().save(true, null);
			problems.merge(saved);
		} catch (CoreException e) {
			problems.merge(e.getStatus());
		}
		if (!problems.isOK()) {
			Platform.getLog(Workbench.class).log(problems);
		}
	}
}
