/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.completion;

import java.util.Locale;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistEntry;

/**
 * Something to offer.
 *
 * @param text          what is written
 * @param detail        what it is, in a line
 * @param documentation more of it; may be null
 * @param weight        the heavier, the higher in the list
 */
record Candidate(String text, String detail, String documentation, int weight) {

	/** Whether what is written already begins its text or a word of its detail. */
	boolean suits(String prefix) {
		String begun = prefix.toLowerCase(Locale.ROOT);
		return text.toLowerCase(Locale.ROOT).startsWith(begun)
				|| begun.length() > 1 && (" " + detail.toLowerCase(Locale.ROOT)).contains(" " + begun);
	}

	ContentAssistEntry entry(String prefix, String kind) {
		ContentAssistEntry entry = new ContentAssistEntry();
		entry.setPrefix(prefix);
		entry.setProposal(text);
		entry.setLabel(text);
		entry.setDescription(detail);
		entry.setDocumentation(documentation);
		entry.setKind(kind);
		return entry;
	}
}
