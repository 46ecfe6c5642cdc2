/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.util.EnumSet;
import java.util.Set;

/** How results are written. */
enum Format {
	text, json, sarif, junit, markdown;

	/** Those that figures can be written in. */
	static final Set<Format> OF_FIGURES = EnumSet.of(text, json);

	/** Those that lists can be written in. */
	static final Set<Format> OF_LISTS = EnumSet.of(text, json);
}
