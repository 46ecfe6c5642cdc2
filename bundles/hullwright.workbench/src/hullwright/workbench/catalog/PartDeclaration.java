/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.catalog;

import hullwright.check.OfferedPart;
import hullwright.check.ProjectTexts;
import hullwright.check.Snapshot;

/**
 * The declaration of a part, as its catalog writes it.
 */
final class PartDeclaration {

	private PartDeclaration() {
	}

	/** The text of the catalog that a part is in; empty if it is gone. */
	static String catalogText(Snapshot snapshot, OfferedPart part) {
		return (part.builtIn() ? ProjectTexts.builtIn(part.file()) : snapshot.text(part.file())).orElse("");
	}

	/** The part as it is declared, without the indentation that it has there. */
	static String of(String catalog, int offset) {
		if (offset < 0 || offset >= catalog.length()) {
			return "";
		}
		int start = catalog.lastIndexOf('\n', offset) + 1;
		String declared = catalog.substring(start, end(catalog, offset));
		int indent = declared.length() - declared.stripLeading().length();
		StringBuilder text = new StringBuilder();
		declared.lines().forEach(line -> text.append(text.isEmpty() ? "" : "\n").append(line.substring(Math.min(indent, line.length() - line.stripLeading().length()))));
		return text.toString();
	}

	/** Where the block that begins after an offset ends; braces in quotes and comments are none. */
	private static int end(String text, int offset) {
		int depth = 0;
		for (int at = offset; at < text.length(); at++) {
			char here = text.charAt(at);
			if (here == '"') {
				at = text.indexOf('"', at + 1);
				if (at < 0) {
					return text.length();
				}
			} else if (here == '/' && text.startsWith("//", at)) {
				int line = text.indexOf('\n', at);
				at = line < 0 ? text.length() : line;
			} else if (here == '{') {
				depth++;
			} else if (here == '}' && --depth == 0) {
				return at + 1;
			}
		}
		return text.length();
	}
}
