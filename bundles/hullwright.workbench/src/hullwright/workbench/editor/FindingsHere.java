/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.workbench.live.FindingAnnotation;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.ISourceViewer;

/**
 * The findings that an editor shows at a place of its text.
 *
 * @param touching those whose place the offset lies in
 * @param onLine   those that start on the same line, without touching the offset
 */
record FindingsHere(List<FindingAnnotation> touching, List<FindingAnnotation> onLine) {

	static FindingsHere at(ISourceViewer viewer, int offset) {
		FindingsHere here = new FindingsHere(new ArrayList<>(), new ArrayList<>());
		IAnnotationModel model = viewer.getAnnotationModel();
		IDocument document = viewer.getDocument();
		if (model == null || document == null) {
			return here;
		}
		for (Iterator<Annotation> all = model.getAnnotationIterator(); all.hasNext();) {
			if (all.next() instanceof FindingAnnotation finding) {
				here.sort(finding, model.getPosition(finding), document, offset);
			}
		}
		return here;
	}

	private void sort(FindingAnnotation finding, Position place, IDocument document, int offset) {
		if (place == null || place.isDeleted()) {
			return;
		}
		try {
			if (place.getOffset() <= offset && offset <= place.getOffset() + place.getLength()) {
				touching.add(finding);
			} else if (document.getLineOfOffset(place.getOffset()) == document.getLineOfOffset(offset)) {
				onLine.add(finding);
			}
		} catch (BadLocationException e) {
			// the text is shorter than it was when this was found; the next check is on the way
		}
	}

	/** The touching ones; if there are none, those on the line. */
	List<FindingAnnotation> nearest() {
		return touching.isEmpty() ? onLine : touching;
	}
}
