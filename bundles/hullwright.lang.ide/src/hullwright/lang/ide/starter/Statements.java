/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.starter;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Optional;

/**
 * Statements that are added to a series.
 */
public final class Statements {

	private Statements() {
	}

	/** A hull that is sold with these options. */
	public static String hull(String number, Collection<String> options) {
		return "hull " + number + (options.isEmpty() ? "" : " with " + String.join(", ", options));
	}

	/** A finding that the yard lives with, for a reason, for good or until the end of a day. */
	public static String waiver(String rule, String element, String reason, Optional<LocalDate> until) {
		return "waive " + rule + " on " + element + " because " + Names.quoted(reason) + until.map(day -> " until " + day).orElse("");
	}
}
