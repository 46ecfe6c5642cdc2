/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.data;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * On which side of the boat something is, as far as its name says.
 */
enum Side {
	/** Left, looking forward. */
	PORT,
	/** Right, looking forward. */
	STARBOARD,
	/** Its name does not say, or says both. */
	UNKNOWN;

	/** By the words of a name such as {@code enginePort}. */
	static Side named(String name) {
		List<String> words = Arrays.stream(name.split("(?<=\\p{Ll})(?=\\p{Lu})|[_\\d]+")).map(word -> word.toLowerCase(Locale.ROOT)).toList();
		boolean port = words.contains("port");
		boolean starboard = words.contains("starboard");
		return port == starboard ? UNKNOWN : port ? PORT : STARBOARD;
	}
}
