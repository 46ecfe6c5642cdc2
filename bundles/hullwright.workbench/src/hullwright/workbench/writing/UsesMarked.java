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
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.IAnnotationModelExtension;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.swt.widgets.Display;

/**
 * Marks in the text all uses of what is named at the caret: the thing itself, not whatever is spelled like it.
 */
public final class UsesMarked extends CaretReconciler {

	private static final String MARK = "org.eclipse.ui.genericeditor.text";
	private static final int PAUSE_MILLIS = 250;

	private Annotation[] marks = {};
	private int asked;

	/** Installed by the platform. */
	public UsesMarked() {
		super(PAUSE_MILLIS);
	}

	@Override
	void caretRests(ISourceViewer at) {
		IDocument document = at.getDocument();
		Optional<TextDocumentIdentifier> file = LanguageService.get().identifier(document);
		if (file.isEmpty()) {
			return;
		}
		int question = ++asked;
		try {
			DocumentHighlightParams params = new DocumentHighlightParams(file.get(), TextPlaces.position(document, at.getSelectedRange().x));
			Display display = at.getTextWidget().getDisplay();
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
		IAnnotationModel model = viewer() == null || viewer().getDocument() != document ? null : viewer().getAnnotationModel();
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
