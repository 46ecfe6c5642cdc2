/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.spec.Catalog;
import java.util.Optional;

/**
 * Writes parts into a catalog.
 */
public final class CatalogText {

	private CatalogText() {
	}

	/**
	 * A part, as the last one of its catalog, with an empty line before it.
	 *
	 * @param statement the part as it stands at the left margin; its lines are indented as the catalog needs it
	 * @return the change; empty if the catalog has no block
	 */
	public static Optional<TextEdit> part(Catalog catalog, String statement) {
		TextLines lines = new TextLines(catalog);
		return BlockBraces.close(catalog).map(close -> {
			String inside = lines.lineEnd() + lines.indentOfLine(close.getOffset()) + "\t";
			TextEdit edit = lines.beforeBrace(close, null, String.join(inside, statement.lines().toList()));
			return catalog.eContents().isEmpty() ? edit : SeriesText.parted(lines, edit);
		});
	}
}
