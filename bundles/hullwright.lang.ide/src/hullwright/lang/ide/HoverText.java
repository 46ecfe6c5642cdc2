/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;

/**
 * Puts lines below what a hover says already.
 */
final class HoverText {

	private HoverText() {
	}

	/** The hover with the lines; the hover itself, which may be null, if there are none. */
	static Hover with(Hover hover, List<String> lines) {
		if (lines.isEmpty()) {
			return hover;
		}
		String added = String.join("\n", lines);
		if (hover == null || hover.getContents() == null) {
			return new Hover(new MarkupContent(MarkupKind.PLAINTEXT, added));
		}
		boolean marked = hover.getContents().isRight();
		String before = marked ? hover.getContents().getRight().getValue()
				: hover.getContents().getLeft().stream().map(part -> part.map(text -> text, code -> code.getValue())).collect(Collectors.joining("\n"));
		String kind = marked ? hover.getContents().getRight().getKind() : MarkupKind.PLAINTEXT;
		Hover whole = new Hover(new MarkupContent(kind, before.isBlank() ? added : before + "\n\n" + added));
		whole.setRange(hover.getRange());
		return whole;
	}
}
