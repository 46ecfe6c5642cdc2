/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.util.Arrays;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IMarker;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.dialogs.ElementListSelectionDialog;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.views.markers.MarkerViewHandler;

/**
 * Offers in the Findings view what can be done about the selected finding. The platform's own command serves its own views only.
 */
public final class MendFinding extends MarkerViewHandler {

	private static final String TITLE = "Mend finding";

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		Shell shell = HandlerUtil.getActiveShellChecked(event);
		IMarker[] selected = getSelectedMarkers(event);
		if (selected.length == 1) {
			mend(shell, selected[0]);
		}
		return null;
	}

	private static void mend(Shell shell, IMarker marker) {
		IMarkerResolution[] resolutions = IDE.getMarkerHelpRegistry().getResolutions(marker);
		if (resolutions.length == 0) {
			MessageDialog.openInformation(shell, TITLE, "No change of the text is known that removes this finding without another as bad.");
			return;
		}
		ElementListSelectionDialog choice = new ElementListSelectionDialog(shell, LabelProvider.createTextProvider(each -> ((IMarkerResolution) each).getLabel()));
		choice.setTitle(TITLE);
		choice.setMessage(marker.getAttribute(IMarker.MESSAGE, ""));
		choice.setElements(resolutions);
		choice.setInitialSelections(Arrays.copyOf(resolutions, 1, Object[].class));
		choice.setMultipleSelection(false);
		if (choice.open() == ElementListSelectionDialog.OK) {
			((IMarkerResolution) choice.getFirstResult()).run(marker);
		}
	}
}
