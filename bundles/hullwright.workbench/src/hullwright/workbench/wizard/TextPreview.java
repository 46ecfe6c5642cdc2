/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.workbench.editor.HullPartitions;
import hullwright.workbench.editor.HullPresentation;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.presentation.IPresentationReconciler;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.source.SourceViewer;
import org.eclipse.jface.text.source.SourceViewerConfiguration;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/**
 * Shows a text of the language in its colours, to be read and copied only.
 */
public final class TextPreview {

	private final SourceViewer viewer;

	/** An empty preview in a composite whose layout the caller decides. */
	public TextPreview(Composite parent) {
		viewer = new SourceViewer(parent, null, SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL | SWT.MULTI);
		viewer.configure(new SourceViewerConfiguration() {
			@Override
			public IPresentationReconciler getPresentationReconciler(ISourceViewer source) {
				return new HullPresentation();
			}
		});
		viewer.setEditable(false);
		viewer.getTextWidget().setFont(JFaceResources.getTextFont());
		viewer.getTextWidget().setTabs(4);
		viewer.getTextWidget().setMargins(6, 4, 6, 4);
		// a tab is no part of a text that cannot be changed, so the key goes on to the next field
		viewer.getTextWidget().addTraverseListener(event -> event.doit = true);
	}

	/** Its widget, for layout. */
	public Control control() {
		return viewer.getControl();
	}

	/** Shows a text; nothing happens if it is shown already. */
	public void show(String text) {
		if (viewer.getDocument() == null || !viewer.getDocument().get().equals(text)) {
			Document document = new Document(text);
			new HullPartitions().setup(document);
			viewer.setDocument(document);
		}
	}
}
