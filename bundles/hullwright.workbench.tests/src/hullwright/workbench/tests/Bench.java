/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.workbench.live.FindingAnnotation;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextOperationTarget;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;

/**
 * A project with a small boat of the test's own, and one of its files in an editor.
 */
final class Bench implements AutoCloseable {

	static final String PROFILE = "profile Bench from standard {\n}\n";

	private final IProject project;
	private final ITextEditor editor;
	private final IFile file;

	private Bench(IProject project, IFile file, ITextEditor editor) {
		this.project = project;
		this.file = file;
		this.editor = editor;
	}

	/** Makes a project of these files and opens the first one that is named. */
	static Bench open(String name, Map<String, String> files, String opened) throws CoreException {
		IProject project = create(name, files);
		IFile file = project.getFile(opened);
		ITextEditor editor = Window.ui(() -> (ITextEditor) IDE.openEditor(Window.page(), file));
		return new Bench(project, file, editor);
	}

	/** Makes a project of these files and opens none. */
	static IProject create(String name, Map<String, String> files) throws CoreException {
		IProject project = ResourcesPlugin.getWorkspace().getRoot().getProject(name);
		assertTrue(!project.exists(), "each test has a project of its own");
		ResourcesPlugin.getWorkspace().run(monitor -> {
			project.create(monitor);
			project.open(monitor);
			for (Map.Entry<String, String> each : files.entrySet()) {
				project.getFile(each.getKey()).create(each.getValue().getBytes(StandardCharsets.UTF_8), true, false, monitor);
			}
		}, null);
		return project;
	}

	IFile file() {
		return file;
	}

	IDocument document() {
		return editor.getDocumentProvider().getDocument(editor.getEditorInput());
	}

	ITextEditor editor() {
		return editor;
	}

	ISourceViewer viewer() {
		return (ISourceViewer) editor.getAdapter(ITextOperationTarget.class);
	}

	StyledText text() {
		return viewer().getTextWidget();
	}

	/** Replaces a piece of the text, as typing over a selection does. */
	void type(String over, String text) {
		Window.ui(() -> {
			int at = document().get().indexOf(over);
			assertTrue(at >= 0, "the text contains: " + over);
			editor.selectAndReveal(at, over.length());
			text().insert(text);
			return null;
		});
	}

	/** Puts the caret into the text. */
	void caretAt(String place) {
		Window.ui(() -> {
			int at = document().get().indexOf(place);
			assertTrue(at >= 0, "the text contains: " + place);
			editor.selectAndReveal(at, 0);
			editor.setFocus();
			return null;
		});
	}

	void save() {
		Window.ui(() -> {
			editor.doSave(null);
			return null;
		});
	}

	/** What the editor marks, as "rule: message", sorted. To be called in the UI thread. */
	List<String> annotations() {
		List<String> found = new ArrayList<>();
		IAnnotationModel model = FileBuffers.getTextFileBufferManager().getTextFileBuffer(file.getFullPath(), LocationKind.IFILE)
				.getAnnotationModel();
		for (Iterator<Annotation> all = model.getAnnotationIterator(); all.hasNext();) {
			if (all.next() instanceof FindingAnnotation finding) {
				found.add(finding.rule() + ": " + finding.getText());
			}
		}
		found.sort(null);
		return found;
	}

	/** What the Findings view lists for a file, as "rule: message", sorted. */
	static List<String> markers(IResource resource) throws CoreException {
		IMarker[] markers = resource.findMarkers("hullwright.workbench.finding", true, IResource.DEPTH_INFINITE);
		return Arrays.stream(markers)
				.map(marker -> marker.getAttribute("rule", "") + ": " + marker.getAttribute(IMarker.MESSAGE, "")).sorted().toList();
	}

	@Override
	public void close() throws CoreException {
		Window.ui(() -> Window.page().closeEditor(editor, false));
		project.delete(true, true, null);
	}
}
