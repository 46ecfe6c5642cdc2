/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.check.Addition;
import hullwright.check.SeriesInText;
import hullwright.check.Snapshot;
import hullwright.lang.ide.starter.Statements;
import hullwright.workbench.wizard.AddedText;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IMarker;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.views.markers.MarkerViewHandler;

/**
 * Sets a finding aside: asks for the reason and writes the waiver into the series, as one step to undo.
 */
public final class WaiveFinding extends MarkerViewHandler {

	private static final String TITLE = "Waive finding";

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		Shell shell = HandlerUtil.getActiveShellChecked(event);
		IMarker[] selected = getSelectedMarkers(event);
		if (selected.length == 1) {
			waive(shell, selected[0]);
		}
		return null;
	}

	private record Found(Snapshot snapshot, Optional<SeriesInText> series) {
	}

	private static void waive(Shell shell, IMarker marker) {
		String element = marker.getAttribute(FindingMarkers.ELEMENT, "");
		int point = element.indexOf('.');
		Optional<ProjectText> text = ProjectText.around(marker.getResource());
		if (point < 0 || text.isEmpty()) {
			MessageDialog.openInformation(shell, TITLE, point < 0 && !element.isEmpty()
					? "This finding is about the series as a whole, which a waiver cannot name. A profile can switch the rule off or make it milder."
					: "A waiver is about an element of a boat. This finding is about the text itself, and stays until that is mended.");
			return;
		}
		WaiverDialog dialog = new WaiverDialog(shell, marker.getAttribute(FindingMarkers.RULE, ""), element.substring(point + 1),
				marker.getAttribute(IMarker.MESSAGE, ""));
		if (dialog.open() != WaiverDialog.OK) {
			return;
		}
		String statement = Statements.waiver(marker.getAttribute(FindingMarkers.RULE, ""), element.substring(point + 1), dialog.reason(), dialog.until());
		CompletableFuture.supplyAsync(() -> find(text.get(), element.substring(0, point)))
				.whenComplete((found, failure) -> shell.getDisplay().asyncExec(() -> write(shell, text.get(), found, failure, statement)));
	}

	private static Found find(ProjectText text, String series) {
		try {
			Snapshot snapshot = text.read();
			return new Found(snapshot, ProjectText.engine().texts().series(snapshot).stream().filter(each -> each.outline().name().equals(series)).findFirst());
		} catch (IOException e) {
			throw new CompletionException(e);
		}
	}

	private static void write(Shell shell, ProjectText text, Found found, Throwable failure, String statement) {
		if (shell.isDisposed()) {
			return;
		}
		if (failure != null || found.series().isEmpty()) {
			MessageDialog.openError(shell, TITLE, "The waiver was not written: " + (failure == null
					? "the series cannot be read as it stands. Mend its text first." : failure.getMessage()));
			return;
		}
		AddedText.write(text, found.snapshot(), new Addition(Addition.Kind.WAIVER, found.series().get().outline().origin(), statement), List.of());
	}
}
