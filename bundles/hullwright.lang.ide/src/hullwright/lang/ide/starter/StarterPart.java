/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.starter;

import java.util.Map;

/**
 * A part to begin with, for a catalog of the house.
 *
 * @param kind what it is
 * @param name its name in the catalog
 * @param title what people call it, or empty
 * @param family the connector family of its connectors
 * @param values what is stated of it, by the keys of its kind; what is missing has its usual value
 * @param article the article number under which it is bought, or empty
 * @param source where the values were read, or empty
 */
public record StarterPart(PartKind kind, String name, String title, String family, Map<String, String> values, String article, String source) {

	public StarterPart {
		values = Map.copyOf(values);
	}

	/** The part, as it stands at the left margin. */
	public String statement() {
		StringBuilder text = new StringBuilder(kind.filled(name + Names.title(title), family, values));
		property(text, "article", article);
		property(text, "source", source);
		return text.append('}').toString();
	}

	private static void property(StringBuilder text, String word, String value) {
		if (!value.isBlank()) {
			text.append('\t').append(word).append(' ').append(Names.quoted(value)).append('\n');
		}
	}

	/** The text of a file with a new catalog that holds this part and can name the standard ones. */
	public String file(String catalog, String catalogTitle) {
		return "import \"standard:parts\"\n\ncatalog " + catalog + Names.title(catalogTitle) + " {\n\t"
				+ statement().replace("\n", "\n\t") + "\n}\n";
	}
}
