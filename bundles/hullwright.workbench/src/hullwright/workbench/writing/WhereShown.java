/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.reconciler.IReconciler;
import org.eclipse.jface.text.reconciler.IReconcilingStrategy;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.swt.custom.CaretListener;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/**
 * Shows in the status line where in the boat the caret is.
 */
public final class WhereShown implements IReconciler {

	private static final int PAUSE_MILLIS = 150;

	private final Runnable show = this::show;
	private final CaretListener moved = event -> event.display.timerExec(PAUSE_MILLIS, show);
	private ISourceViewer viewer;

	@Override
	public void install(ITextViewer installed) {
		if (installed instanceof ISourceViewer source) {
			viewer = source;
			viewer.getTextWidget().addCaretListener(moved);
		}
	}

	@Override
	public void uninstall() {
		StyledText text = viewer == null ? null : viewer.getTextWidget();
		if (text != null && !text.isDisposed()) {
			text.removeCaretListener(moved);
			text.getDisplay().timerExec(-1, show);
		}
		viewer = null;
	}

	@Override
	public IReconcilingStrategy getReconcilingStrategy(String contentType) {
		return null;
	}

	private void show() {
		StyledText text = viewer == null ? null : viewer.getTextWidget();
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		IEditorPart editor = window == null || window.getActivePage() == null ? null : window.getActivePage().getActiveEditor();
		if (text != null && !text.isDisposed() && text.isFocusControl() && editor != null && viewer.getDocument() != null) {
			try {
				StatusLine.say(editor, WhereInBoat.at(viewer.getDocument(), viewer.getSelectedRange().x));
			} catch (BadLocationException e) {
				// the text is shorter by now, and the caret elsewhere
			}
		}
	}
}
