/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.completion;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.eclipse.lsp4j.CompletionCapabilities;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;

/**
 * Makes offers fit what a client can do with them.
 */
public final class OfferedItems {

	private static final Pattern PLACE_TO_FILL_IN = Pattern.compile("\\$\\{\\d+:([^}]*)}|\\$0");

	private OfferedItems() {
	}

	/** Whether a client lets a person fill in the places of a snippet. */
	public static boolean fillsIn(InitializeParams client) {
		return Optional.ofNullable(client.getCapabilities().getTextDocument()).map(TextDocumentClientCapabilities::getCompletion)
				.map(CompletionCapabilities::getCompletionItem).map(CompletionItemCapabilities::getSnippetSupport).orElse(false);
	}

	/** The same offers; found by what they are as well as by their name, and without places to fill in for a client that knows none. */
	public static List<CompletionItem> fit(List<CompletionItem> items, boolean fillsIn) {
		for (CompletionItem item : items) {
			if (item.getInsertTextFormat() == InsertTextFormat.Snippet && !fillsIn) {
				item.setInsertTextFormat(InsertTextFormat.PlainText);
				if (item.getTextEdit() != null && item.getTextEdit().isLeft()) {
					item.getTextEdit().getLeft().setNewText(filledIn(item.getTextEdit().getLeft().getNewText()));
				}
			}
			if (item.getDetail() != null && !item.getDetail().isEmpty()) {
				item.setFilterText(item.getLabel() + " " + item.getDetail());
			}
		}
		return items;
	}

	/** A snippet with what it proposes for each place. */
	static String filledIn(String snippet) {
		return PLACE_TO_FILL_IN.matcher(snippet).replaceAll(place -> place.group(1) == null ? "" : place.group(1));
	}
}
