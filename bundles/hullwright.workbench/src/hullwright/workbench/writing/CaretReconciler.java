/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.reconciler.IReconciler;
import org.eclipse.jface.text.reconciler.IReconcilingStrategy;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.swt.custom.CaretListener;
import org.eclipse.swt.custom.StyledText;

/**
 * Does something in the UI thread whenever the caret of an editor has come to rest. The platform installs reconcilers with an editor
 * and takes them away with it; this one reconciles nothing.
 */
abstract class CaretReconciler implements IReconciler {

	private final Runnable rest = this::rest;
	private final CaretListener moved;
	private ISourceViewer viewer;

	/**
	 * @param pauseMillis how long the caret must stay where it is
	 */
	CaretReconciler(int pauseMillis) {
		moved = event -> event.display.timerExec(pauseMillis, rest);
	}

	@Override
	public final void install(ITextViewer installed) {
		if (installed instanceof ISourceViewer source) {
			viewer = source;
			viewer.getTextWidget().addCaretListener(moved);
		}
	}

	@Override
	public final void uninstall() {
		StyledText text = viewer == null ? null : viewer.getTextWidget();
		if (text != null && !text.isDisposed()) {
			text.removeCaretListener(moved);
			text.getDisplay().timerExec(-1, rest);
		}
		viewer = null;
	}

	@Override
	public final IReconcilingStrategy getReconcilingStrategy(String contentType) {
		return null;
	}

	private void rest() {
		StyledText text = viewer == null ? null : viewer.getTextWidget();
		if (text != null && !text.isDisposed() && viewer.getDocument() != null) {
			caretRests(viewer);
		}
	}

	/** The editor that it is installed on, or null. */
	final ISourceViewer viewer() {
		return viewer;
	}

	/** The caret has come to rest in an editor that shows a document. */
	abstract void caretRests(ISourceViewer at);
}
