/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.util.Iterator;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IWorkbenchPage;

/**
 * The finding that a person is at: the one that is selected in a list, or that the editor marks in the line of the cursor.
 */
public final class FindingsAtWork {

	private FindingsAtWork() {
	}

	/** The rule behind it; empty if there is no finding. To be called by the UI thread. */
	public static Optional<String> rule(IWorkbenchPage page, ISelection selection) {
		if (selection instanceof ITextSelection text) {
			return AtWork.file(page).flatMap(file -> inLine(file, text));
		}
		return marker(selection).map(marker -> marker.getAttribute(FindingMarkers.RULE, "")).filter(rule -> !rule.isEmpty());
	}

	/** The finding that is selected in a list. */
	public static Optional<IMarker> marker(ISelection selection) {
		return selection instanceof IStructuredSelection list ? Optional.ofNullable(Adapters.adapt(list.getFirstElement(), IMarker.class)) : Optional.empty();
	}

	private static Optional<String> inLine(IFile file, ITextSelection cursor) {
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(file.getFullPath(), LocationKind.IFILE);
		if (buffer == null || buffer.getAnnotationModel() == null) {
			return Optional.empty();
		}
		Optional<String> inLine = Optional.empty();
		for (Iterator<Annotation> all = buffer.getAnnotationModel().getAnnotationIterator(); all.hasNext();) {
			Annotation each = all.next();
			Position place = buffer.getAnnotationModel().getPosition(each);
			if (each instanceof FindingAnnotation finding && place != null) {
				if (place.offset <= cursor.getOffset() && cursor.getOffset() <= place.offset + place.length) {
					return Optional.of(finding.rule());
				}
				inLine = lineOf(buffer, place.offset) == cursor.getStartLine() ? Optional.of(finding.rule()) : inLine;
			}
		}
		return inLine;
	}

	private static int lineOf(ITextFileBuffer buffer, int offset) {
		try {
			return buffer.getDocument().getLineOfOffset(offset);
		} catch (BadLocationException e) {
			return -1;
		}
	}
}
