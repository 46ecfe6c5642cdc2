/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.starter;

import hullwright.lang.ide.EditorLanguage;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Names that a text can give, and words in quotes.
 */
public final class Names {

	private static final Pattern NAME = Pattern.compile("[a-zA-Z_][a-zA-Z0-9_]*");

	private Names() {
	}

	/** A name for something with a title: "Day boat 23" becomes "DayBoat23". Empty if the title has no letter. */
	public static String from(String title) {
		StringBuilder name = new StringBuilder();
		String plain = Normalizer.normalize(title, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
		for (String word : plain.split("[^a-zA-Z0-9]+")) {
			if (!word.isEmpty()) {
				name.append(word.substring(0, 1).toUpperCase(Locale.ROOT)).append(word.substring(1));
			}
		}
		return name.toString().replaceFirst("^[0-9]+", "");
	}

	/** The name of a file for something with a title: "Day boat 23" becomes "day-boat-23.hull". */
	public static String file(String title) {
		String plain = Normalizer.normalize(title, Normalizer.Form.NFD).replaceAll("\\p{M}", "").toLowerCase(Locale.ROOT);
		return plain.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "") + "." + EditorLanguage.FILE_EXTENSION;
	}

	/**
	 * Why a text cannot be a name, in a sentence.
	 *
	 * @param of what it would be the name of, such as "The series"
	 */
	public static Optional<String> problem(String of, String name) {
		if (name.isBlank()) {
			return Optional.of(of + " needs a name.");
		}
		if (!NAME.matcher(name).matches()) {
			return Optional.of("The name '" + name + "' must begin with a letter and hold letters, digits and _ only.");
		}
		if (EditorLanguage.keywords().contains(name)) {
			return Optional.of("'" + name + "' is a word of the language. Take another name.");
		}
		return Optional.empty();
	}

	/** A text in quotes, as the language writes it. */
	public static String quoted(String text) {
		return "\"" + text.strip().replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
	}

	/** A title in quotes with a blank before it, or nothing if there is none. */
	static String title(String title) {
		return title.isBlank() ? "" : " " + quoted(title);
	}
}
