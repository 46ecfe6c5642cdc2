/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.ui.texteditor.ResourceMarkerAnnotationModel;

/**
 * The annotations of an open .hull file: live findings instead of the markers of the saved text, which would show each twice.
 */
final class FindingAnnotationModel extends ResourceMarkerAnnotationModel {

	FindingAnnotationModel(IResource resource) {
		super(resource);
	}

	@Override
	protected boolean isAcceptable(IMarker marker) {
		try {
			return super.isAcceptable(marker) && !FindingMarkers.TYPE.equals(marker.getType());
		} catch (CoreException e) {
			// the marker is gone
			return false;
		}
	}

	/** Replaces the findings that are shown. To be called by the UI thread, with findings of the text as it is now. */
	void show(LanguageService service, Path file, IDocument document, List<Diagnostic> diagnostics) {
		List<Annotation> old = new ArrayList<>();
		for (Iterator<Annotation> all = getAnnotationIterator(); all.hasNext();) {
			Annotation annotation = all.next();
			if (annotation instanceof FindingAnnotation) {
				old.add(annotation);
			}
		}
		Map<Annotation, Position> fresh = new HashMap<>();
		for (Diagnostic diagnostic : diagnostics) {
			int start = FindingMarkers.offset(document, diagnostic.getRange().getStart());
			int end = FindingMarkers.offset(document, diagnostic.getRange().getEnd());
			FindingAnnotation finding = new FindingAnnotation(service, file, diagnostic);
			fresh.put(finding, new Position(start, Math.max(0, end - start)));
			// starts the work now, so that the fixes are there when somebody asks for them
			finding.fixes();
		}
		replaceAnnotations(old.toArray(Annotation[]::new), fresh);
	}
}
