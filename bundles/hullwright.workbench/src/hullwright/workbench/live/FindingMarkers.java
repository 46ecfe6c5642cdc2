/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.lang.ide.EditorLanguage;
import hullwright.lang.ide.HullServer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.ISchedulingRule;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.IDocument;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Position;
import org.eclipse.ui.ide.IDE;

/**
 * Writes the findings of one saved file as markers, for the Findings view. What is unchanged stays, so that nothing flickers.
 */
final class FindingMarkers extends WorkspaceJob {

	/** The markers' type, declared in plugin.xml. */
	static final String TYPE = "hullwright.workbench.finding";

	/** The attribute that holds the id of the rule. */
	static final String RULE = "rule";

	/** The attribute that says whether the rule knows something to do about it. */
	static final String FIXABLE = "fixable";

	/** The attribute that holds the qualified name of the element, empty where the text itself is meant. */
	static final String ELEMENT = "element";

	/** The attribute that says on which boats it occurs. */
	static final String BOATS = "boats";

	/** The attribute that says on which kind of boats it occurs, for grouping. */
	static final String OCCURS = "occurs";

	/** The attribute that holds the family of the rule, for grouping. */
	static final String FAMILY = "family";

	private static final String COLUMN = "column";

	/** The platform lets markers be written at any time, so two lists of one file that came in a row would both be written. */
	private static final ISchedulingRule ONE_AFTER_THE_OTHER = new ISchedulingRule() {
		@Override
		public boolean contains(ISchedulingRule rule) {
			return rule == this;
		}

		@Override
		public boolean isConflicting(ISchedulingRule rule) {
			return rule == this;
		}
	};

	private final IResource resource;
	private final List<Diagnostic> diagnostics;

	FindingMarkers(IResource resource, List<Diagnostic> diagnostics) {
		super("Listing findings of " + resource.getName());
		this.resource = resource;
		this.diagnostics = diagnostics;
		setSystem(true);
		setRule(ONE_AFTER_THE_OTHER);
	}

	@Override
	public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
		try {
			write();
		} catch (CoreException e) {
			// deleted meanwhile, with its markers
			if (resource.exists()) {
				throw e;
			}
		}
		return Status.OK_STATUS;
	}

	private void write() throws CoreException {
		if (!resource.exists()) {
			return;
		}
		IDocument text = new Document(resource instanceof IFile file ? file.readString() : "");
		List<Map<String, Object>> wanted = new ArrayList<>();
		diagnostics.forEach(diagnostic -> wanted.add(attributes(text, diagnostic)));
		Set<Map<String, Object>> kept = new HashSet<>();
		for (IMarker marker : resource.findMarkers(TYPE, true, IResource.DEPTH_ZERO)) {
			Map<String, Object> present = marker.getAttributes();
			if (present == null || !wanted.contains(present) || !kept.add(present)) {
				marker.delete();
			}
		}
		for (Map<String, Object> attributes : wanted) {
			if (kept.add(attributes)) {
				resource.createMarker(TYPE, attributes);
			}
		}
	}

	private Map<String, Object> attributes(IDocument text, Diagnostic diagnostic) {
		Map<String, Object> attributes = new HashMap<>();
		attributes.put(IMarker.MESSAGE, message(diagnostic));
		attributes.put(IMarker.SEVERITY, severity(diagnostic));
		attributes.put(IMarker.SOURCE_ID, String.valueOf(diagnostic.getSource()));
		attributes.put(RULE, rule(diagnostic));
		attributes.put(FIXABLE, HullServer.mayBeMended(diagnostic));
		String boats = HullServer.boats(diagnostic);
		attributes.put(ELEMENT, HullServer.element(diagnostic));
		attributes.put(BOATS, boats);
		attributes.put(OCCURS, boats.isEmpty() ? "text" : boats.equals(HullServer.EVERY_BOAT) ? "every" : "some");
		attributes.put(FAMILY, rule(diagnostic).replaceFirst("/.*", ""));
		if (resource.getType() == IResource.FILE && !EditorLanguage.FILE_EXTENSION.equals(resource.getFileExtension())) {
			// a plugin is no text to be opened
			attributes.put(IDE.EDITOR_ID_ATTR, PluginPage.ID);
		}
		if (resource.getType() == IResource.FILE) {
			Position start = diagnostic.getRange().getStart();
			int from = offset(text, start);
			attributes.put(IMarker.LINE_NUMBER, start.getLine() + 1);
			attributes.put(COLUMN, start.getCharacter() + 1);
			attributes.put(IMarker.CHAR_START, from);
			attributes.put(IMarker.CHAR_END, Math.max(from, offset(text, diagnostic.getRange().getEnd())));
		}
		return attributes;
	}

	/** Whether a marker was written for a finding that says the same of the same place. */
	static boolean stands(IMarker marker, Diagnostic diagnostic) {
		Position start = diagnostic.getRange().getStart();
		return rule(diagnostic).equals(marker.getAttribute(RULE, ""))
				&& message(diagnostic).equals(marker.getAttribute(IMarker.MESSAGE, ""))
				&& marker.getAttribute(IMarker.LINE_NUMBER, 1) == start.getLine() + 1
				&& marker.getAttribute(COLUMN, 1) == start.getCharacter() + 1;
	}

	static String message(Diagnostic diagnostic) {
		return diagnostic.getMessage().isLeft() ? diagnostic.getMessage().getLeft() : diagnostic.getMessage().getRight().getValue();
	}

	static String rule(Diagnostic diagnostic) {
		return diagnostic.getCode() == null ? "" : diagnostic.getCode().map(code -> code, String::valueOf);
	}

	private static int severity(Diagnostic diagnostic) {
		if (diagnostic.getSeverity() == DiagnosticSeverity.Error) {
			return IMarker.SEVERITY_ERROR;
		}
		return diagnostic.getSeverity() == DiagnosticSeverity.Warning ? IMarker.SEVERITY_WARNING : IMarker.SEVERITY_INFO;
	}

	/** The offset of a place; one beyond the end of its line or of the text is moved there. */
	static int offset(IDocument text, Position position) {
		try {
			int line = Math.min(position.getLine(), text.getNumberOfLines() - 1);
			int length = text.getLineLength(line);
			return text.getLineOffset(line) + Math.min(position.getCharacter(), length);
		} catch (BadLocationException e) {
			return text.getLength();
		}
	}
}
