/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.workbench.live.TextPlaces;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.text.edits.MalformedTreeException;
import org.eclipse.text.edits.MultiTextEdit;
import org.eclipse.text.edits.ReplaceEdit;

/**
 * What a fix would change, line by line: what goes has a minus before it, what comes a plus.
 */
final class FixPreview {

	private static final int MOST_LINES = 20;

	private FixPreview() {
	}

	/** The changed lines of all files. */
	static String of(CodeAction fix) {
		List<String> lines = new ArrayList<>();
		fix.getEdit().getDocumentChanges().forEach(change -> {
			TextDocumentEdit edit = change.getLeft();
			Optional<IFile> file = TextPlaces.file(edit.getTextDocument().getUri());
			file.ifPresent(found -> {
				try {
					lines.add(found.getName());
					lines.addAll(changed(text(found), edit));
				} catch (CoreException | BadLocationException | MalformedTreeException e) {
					lines.add("cannot be shown: the text has changed since");
				}
			});
		});
		return String.join("\n", lines);
	}

	private static String text(IFile file) throws CoreException {
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(file.getFullPath(), LocationKind.IFILE);
		return buffer == null ? file.readString() : buffer.getDocument().get();
	}

	/** Lines of the text before and after, without those at both ends that stay. */
	private static List<String> changed(String before, TextDocumentEdit edit) throws BadLocationException {
		IDocument document = new Document(before);
		MultiTextEdit whole = new MultiTextEdit();
		for (TextEdit each : edit.getEdits().stream().map(either -> either.getLeft()).toList()) {
			IRegion region = TextPlaces.region(document, each.getRange());
			whole.addChild(new ReplaceEdit(region.getOffset(), region.getLength(), each.getNewText()));
		}
		whole.apply(document);
		List<String> old = before.lines().toList();
		List<String> fresh = document.get().lines().toList();
		int start = 0;
		while (start < old.size() && start < fresh.size() && old.get(start).equals(fresh.get(start))) {
			start++;
		}
		int end = 0;
		while (end < old.size() - start && end < fresh.size() - start && old.get(old.size() - 1 - end).equals(fresh.get(fresh.size() - 1 - end))) {
			end++;
		}
		List<String> lines = new ArrayList<>();
		old.subList(start, old.size() - end).forEach(line -> lines.add("\u2212 " + line.strip()));
		fresh.subList(start, fresh.size() - end).forEach(line -> lines.add("+ " + line.strip()));
		return lines.size() > MOST_LINES ? lines.subList(0, MOST_LINES) : lines;
	}
}
