/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.check.Checker;
import hullwright.check.ProjectFolder;
import hullwright.check.Snapshot;
import hullwright.check.plugin.TrustedPlugins;
import hullwright.rules.edit.TextChange;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SnippetTextEdit;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * The project around a file as it stands at one moment, unsaved editors included, for those who read it or write into it.
 */
public final class ProjectText {

	private final Path folder;
	private final Map<Path, Unsaved> open = new TreeMap<>();

	private record Unsaved(String text, int version) {
	}

	private ProjectText(Path folder) {
		this.folder = folder;
		LanguageService.get().documents().in(folder).forEach(each -> open.put(each.path(), new Unsaved(each.document().get(), each.version())));
	}

	/** The project around a file, folder or project of the workspace; empty if it is not on this machine. To be called by the UI thread. */
	public static Optional<ProjectText> around(IResource resource) {
		Optional<Path> given = resource.getProject() == null ? Optional.empty() : FileUris.path(resource.getProject());
		return FileUris.path(resource).flatMap(path -> given.map(project -> ProjectFolder.of(resource instanceof IFile ? path.getParent() : path, project)))
				.map(ProjectText::new);
	}

	/** The engine that the window reads projects with, beside the one that checks while somebody types. */
	public static Checker engine() {
		return Made.ENGINE;
	}

	/** Where the project is. */
	public Path folder() {
		return folder;
	}

	/** The path of a file within the project, as the engine names it. */
	public Optional<String> relative(IResource file) {
		return FileUris.path(file).filter(path -> path.startsWith(folder)).map(path -> folder.relativize(path).toString().replace('\\', '/'));
	}

	/** The file of the workspace that the engine names so. */
	public Optional<IFile> file(String relative) {
		return FileUris.resource(folder.resolve(relative)).filter(IFile.class::isInstance).map(IFile.class::cast);
	}

	/**
	 * The texts. Not to be called by the UI thread.
	 *
	 * @throws IOException if the folder cannot be read
	 */
	public Snapshot read() throws IOException {
		Snapshot snapshot = Snapshot.ofFolder(folder);
		for (Map.Entry<Path, Unsaved> each : open.entrySet()) {
			snapshot = snapshot.with(folder.relativize(each.getKey()).toString().replace('\\', '/'), each.getValue().text);
		}
		return snapshot;
	}

	/**
	 * Changes the texts, as one step to undo in each editor. Whoever wants the change unsaved opens an editor first. To be called by
	 * the UI thread.
	 *
	 * @param snapshot what the changes were worked out for
	 * @throws CoreException with a sentence for the person, if a file is no longer what was read or cannot be changed
	 */
	public void change(Snapshot snapshot, List<TextChange> changes) throws CoreException {
		Map<String, List<Either<TextEdit, SnippetTextEdit>>> edits = new LinkedHashMap<>();
		for (TextChange change : changes) {
			IDocument text = new Document(snapshot.text(change.file()).orElse(""));
			Range range = new Range(position(text, change.offset()), position(text, change.offset() + change.length()));
			edits.computeIfAbsent(change.file(), key -> new ArrayList<>()).add(Either.forLeft(new TextEdit(range, change.replacement())));
		}
		WorkspaceEdit whole = new WorkspaceEdit(new ArrayList<>());
		edits.forEach((file, each) -> {
			Path path = folder.resolve(file);
			Unsaved unsaved = open.get(path);
			whole.getDocumentChanges().add(Either.forLeft(
					new TextDocumentEdit(new VersionedTextDocumentIdentifier(FileUris.uri(path), unsaved == null ? null : unsaved.version), each)));
		});
		CodeAction action = new CodeAction();
		action.setEdit(whole);
		new FixEdit(action).make();
	}

	private static Position position(IDocument text, int offset) {
		try {
			int line = text.getLineOfOffset(offset);
			return new Position(line, offset - text.getLineOffset(line));
		} catch (BadLocationException e) {
			throw new IllegalArgumentException("the change at " + offset + " is not in the text that it was worked out for", e);
		}
	}

	/** Made by the first who needs it. */
	private static final class Made {

		static final Checker ENGINE = Checker.create(TrustedPlugins.ofUser());
	}
}
