/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.writing;

import hullwright.workbench.editor.HullPartitions;
import java.util.Arrays;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.DocumentCommand;
import org.eclipse.jface.text.IAutoEditStrategy;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.TextUtilities;

/**
 * What is written along with a key: the second brace or quote, and the indentation of a new line.
 */
public final class TypingHelp implements IAutoEditStrategy {

	@Override
	public void customizeDocumentCommand(IDocument document, DocumentCommand command) {
		try {
			if (command.length == 0 && Arrays.asList(document.getLegalLineDelimiters()).contains(command.text)) {
				newLine(document, command);
			} else if (command.length == 0 && command.text.length() == 1) {
				key(document, command, command.text.charAt(0));
			}
		} catch (BadLocationException e) {
			// the key is taken as it is
		}
	}

	/** Indented as the line before, by one more behind an open brace; a closing brace behind the caret gets a line of its own. */
	private static void newLine(IDocument document, DocumentCommand command) throws BadLocationException {
		IRegion line = document.getLineInformationOfOffset(command.offset);
		String before = document.get(line.getOffset(), command.offset - line.getOffset());
		String behind = document.get(command.offset, line.getOffset() + line.getLength() - command.offset);
		String indent = before.substring(0, before.length() - before.stripLeading().length());
		String delimiter = command.text;
		if (before.stripTrailing().endsWith("{") && isText(document, line.getOffset() + before.stripTrailing().length() - 1)) {
			command.text = delimiter + indent + "\t";
			if (behind.stripLeading().startsWith("}")) {
				command.caretOffset = command.offset + command.text.length();
				command.shiftsCaret = false;
				command.text += delimiter + indent;
				command.length = behind.length() - behind.stripLeading().length();
			}
		} else {
			command.text = delimiter + indent;
		}
	}

	private static void key(IDocument document, DocumentCommand command, char key) throws BadLocationException {
		char next = command.offset < document.getLength() ? document.getChar(command.offset) : '\n';
		boolean inText = isText(document, command.offset);
		if (key == '{' && inText && Character.isWhitespace(next)) {
			pair(command, "{}");
		} else if (key == '"' && next == '"') {
			command.length = 1;
		} else if (key == '"' && inText && (Character.isWhitespace(next) || next == '}')) {
			pair(command, "\"\"");
		} else if (key == '}' && next == '}' && command.offset > 0 && document.getChar(command.offset - 1) == '{') {
			command.length = 1;
		} else if (key == '}' && inText) {
			closing(document, command);
		}
	}

	private static void pair(DocumentCommand command, String pair) {
		command.text = pair;
		command.caretOffset = command.offset + 1;
		command.shiftsCaret = false;
	}

	/** A closing brace that begins its line stands one tab to the left of what it closes. */
	private static void closing(IDocument document, DocumentCommand command) throws BadLocationException {
		IRegion line = document.getLineInformationOfOffset(command.offset);
		String before = document.get(line.getOffset(), command.offset - line.getOffset());
		if (before.isBlank() && before.endsWith("\t")) {
			command.offset -= 1;
			command.length = 1;
		}
	}

	private static boolean isText(IDocument document, int offset) throws BadLocationException {
		return IDocument.DEFAULT_CONTENT_TYPE.equals(TextUtilities.getContentType(document, HullPartitions.PARTITIONING, offset, true));
	}
}
