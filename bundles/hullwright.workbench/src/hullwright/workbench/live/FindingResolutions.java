/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.lang.ide.PluginTrust;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.operation.IRunnableWithProgress;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolutionGenerator2;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * Ways to mend a finding, for the Findings view.
 */
public final class FindingResolutions implements IMarkerResolutionGenerator2 {

	private static final IMarkerResolution[] NONE = {};
	private static final Duration PATIENCE = Duration.ofSeconds(20);

	@Override
	public boolean hasResolutions(IMarker marker) {
		return marker.getAttribute(FindingMarkers.FIXABLE, false) || isOfPlugin(marker);
	}

	/** A plugin that the user has for all projects is no file of the project, and its finding is about the project. */
	private static boolean isOfPlugin(IMarker marker) {
		return PluginTrust.isWanted(marker.getAttribute(FindingMarkers.RULE, "")) && marker.getResource().getType() == IResource.FILE
				&& FileUris.path(marker.getResource()).isPresent();
	}

	@Override
	public IMarkerResolution[] getResolutions(IMarker marker) {
		Optional<Diagnostic> diagnostic = LanguageService.get().findings().of(marker);
		Optional<Path> file = FileUris.path(marker.getResource());
		if (isOfPlugin(marker)) {
			return new IMarkerResolution[] { new TrustPlugin(file.orElseThrow()) };
		}
		if (diagnostic.isEmpty() || file.isEmpty()) {
			return NONE;
		}
		List<IMarkerResolution> resolutions = new ArrayList<>();
		IRunnableWithProgress work = monitor -> LanguageService
				.peek(LanguageService.get().fixes(file.get(), diagnostic.get()), PATIENCE)
				.ifPresent(fixes -> fixes.forEach(fix -> resolutions.add(new Resolution(fix))));
		try {
			// keeps the window alive while the fixes are tried
			PlatformUI.getWorkbench().getProgressService().busyCursorWhile(work);
		} catch (InterruptedException e) {
			return NONE;
		} catch (InvocationTargetException e) {
			ILog.of(FindingResolutions.class).error("The fixes of a finding could not be worked out.", e.getCause());
		}
		return resolutions.toArray(IMarkerResolution[]::new);
	}

	private record Resolution(CodeAction fix) implements IMarkerResolution {

		@Override
		public String getLabel() {
			return fix.getTitle();
		}

		@Override
		public void run(IMarker marker) {
			try {
				new FixEdit(fix).make();
			} catch (CoreException e) {
				StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
			}
		}
	}
}
