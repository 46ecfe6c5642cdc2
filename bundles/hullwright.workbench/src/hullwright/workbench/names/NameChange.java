/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.names;

import hullwright.workbench.live.Question;
import hullwright.workbench.live.TextPlaces;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.ltk.core.refactoring.Change;
import org.eclipse.ltk.core.refactoring.CompositeChange;
import org.eclipse.ltk.core.refactoring.Refactoring;
import org.eclipse.ltk.core.refactoring.RefactoringStatus;
import org.eclipse.ltk.core.refactoring.TextFileChange;
import org.eclipse.text.edits.MultiTextEdit;
import org.eclipse.text.edits.ReplaceEdit;
import org.eclipse.text.edits.TextEditGroup;


/**
 * The change of one name in all texts, as the platform's refactoring: with a preview, as one step to undo, and in editors as
 * well as on the disk.
 */
public final class NameChange extends Refactoring {

	private final NamePlace place;
	private final String oldName;
	private volatile String newName;
	private Change change;

	NameChange(NamePlace place, String oldName) {
		this.place = place;
		this.oldName = oldName;
		this.newName = oldName;
	}

	/** The name as it is. */
	String oldName() {
		return oldName;
	}

	/** The name as it will be. */
	void setNewName(String name) {
		newName = name.strip();
	}

	@Override
	public String getName() {
		return "Rename '" + oldName + "'";
	}

	@Override
	public RefactoringStatus checkInitialConditions(IProgressMonitor monitor) {
		return new RefactoringStatus();
	}

	String newName() {
		return newName;
	}

	/** Why the new name cannot be; empty if it can. Not to be called by the UI thread. */
	Optional<String> refusal(IProgressMonitor monitor) {
		try {
			ask(monitor);
			return Optional.empty();
		} catch (CoreException e) {
			return Optional.of(e.getStatus().getMessage());
		}
	}

	private WorkspaceEdit ask(IProgressMonitor monitor) throws CoreException {
		String name = newName;
		return new Question<>(server -> server.getTextDocumentService().rename(new RenameParams(place.file(), place.position(), name))).ask(monitor);
	}

	@Override
	public RefactoringStatus checkFinalConditions(IProgressMonitor monitor) {
		RefactoringStatus status = new RefactoringStatus();
		try {
			WorkspaceEdit edit = ask(monitor);
			if (edit == null || edit.getDocumentChanges().isEmpty()) {
				status.addFatalError("'" + newName + "' is the name already");
				return status;
			}
			if (edit.getChangeAnnotations() != null) {
				edit.getChangeAnnotations().values().forEach(annotation -> status.addWarning(annotation.getLabel()));
			}
			change = change(edit);
		} catch (CoreException e) {
			status.addFatalError(e.getStatus().getMessage());
		}
		return status;
	}

	private Change change(WorkspaceEdit edit) throws CoreException {
		CompositeChange whole = new CompositeChange("Rename " + oldName + " to " + newName);
		for (var part : edit.getDocumentChanges()) {
			TextDocumentEdit document = part.getLeft();
			Optional<IFile> file = TextPlaces.file(document.getTextDocument().getUri());
			if (file.isEmpty()) {
				throw new CoreException(Status.error("The file " + document.getTextDocument().getUri() + " names it, too, but is not in the workspace."));
			}
			whole.add(change(file.get(), document.getEdits().stream().map(each -> each.getLeft()).toList()));
		}
		return whole;
	}

	private static TextFileChange change(IFile file, List<TextEdit> edits) throws CoreException {
		FileBuffers.getTextFileBufferManager().connect(file.getFullPath(), LocationKind.IFILE, null);
		try {
			IDocument text = FileBuffers.getTextFileBufferManager().getTextFileBuffer(file.getFullPath(), LocationKind.IFILE).getDocument();
			TextFileChange change = new TextFileChange(file.getName(), file);
			change.setTextType("hull");
			change.setSaveMode(TextFileChange.KEEP_SAVE_STATE);
			change.setEdit(new MultiTextEdit());
			for (TextEdit edit : edits) {
				IRegion region = TextPlaces.region(text, edit.getRange());
				ReplaceEdit replace = new ReplaceEdit(region.getOffset(), region.getLength(), edit.getNewText());
				change.addEdit(replace);
				change.addTextEditGroup(new TextEditGroup("Line " + (edit.getRange().getStart().getLine() + 1), replace));
			}
			return change;
		} catch (BadLocationException e) {
			throw new CoreException(Status.error("The text of " + file.getName() + " has changed meanwhile. Try again.", e));
		} finally {
			FileBuffers.getTextFileBufferManager().disconnect(file.getFullPath(), LocationKind.IFILE, null);
		}
	}

	@Override
	public Change createChange(IProgressMonitor monitor) {
		return change;
	}
}
