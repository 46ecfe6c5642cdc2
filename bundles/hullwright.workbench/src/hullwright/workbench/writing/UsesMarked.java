/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import hullwright.workbench.live.LanguageService;
import hullwright.workbench.live.TextPlaces;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.reconciler.IReconciler;
import org.eclipse.jface.text.reconciler.IReconcilingStrategy;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.IAnnotationModelExtension;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.swt.custom.CaretListener;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Display;

/**
 * Marks in the text all uses of what is named at the caret: the thing itself, not whatever is spelled like it.
 */
public final class UsesMarked implements IReconciler {

	private static final String MARK = "org.eclipse.ui.genericeditor.text";
	private static final int PAUSE_MILLIS = 250;

	private final Runnable ask = this::ask;
	private final CaretListener moved = event -> event.display.timerExec(PAUSE_MILLIS, ask);
	private ISourceViewer viewer;
	private Annotation[] marks = {};
	private int asked;

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
			text.getDisplay().timerExec(-1, ask);
		}
		viewer = null;
	}

	@Override
	public IReconcilingStrategy getReconcilingStrategy(String contentType) {
		return null;
	}

	private void ask() {
		IDocument document = viewer == null || viewer.getTextWidget() == null || viewer.getTextWidget().isDisposed() ? null : viewer.getDocument();
		Optional<TextDocumentIdentifier> file = document == null ? Optional.empty() : LanguageService.get().identifier(document);
		if (file.isEmpty()) {
			return;
		}
		int question = ++asked;
		try {
			DocumentHighlightParams params = new DocumentHighlightParams(file.get(), TextPlaces.position(document, viewer.getSelectedRange().x));
			Display display = viewer.getTextWidget().getDisplay();
			LanguageService.get().ask(server -> server.getTextDocumentService().documentHighlight(params)).thenAccept(found -> {
				if (found != null && !display.isDisposed()) {
					display.asyncExec(() -> show(question, document, found));
				}
			});
		} catch (BadLocationException e) {
			// the caret moves on with the text
		}
	}

	/** A question that a change overtakes comes to nothing; the next movement asks again. */
	private void show(int question, IDocument document, List<? extends DocumentHighlight> found) {
		IAnnotationModel model = viewer == null || viewer.getDocument() != document ? null : viewer.getAnnotationModel();
		if (question == asked && model instanceof IAnnotationModelExtension annotated) {
			Map<Annotation, Position> fresh = new HashMap<>();
			for (DocumentHighlight each : found) {
				try {
					IRegion region = TextPlaces.region(document, each.getRange());
					fresh.put(new Annotation(MARK, false, null), new Position(region.getOffset(), region.getLength()));
				} catch (BadLocationException e) {
					// this place has gone since
				}
			}
			annotated.replaceAnnotations(marks, fresh);
			marks = fresh.keySet().toArray(Annotation[]::new);
		}
	}
}
