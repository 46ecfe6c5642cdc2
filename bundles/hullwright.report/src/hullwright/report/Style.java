/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

/**
 * How parts of a report are set off on a terminal.
 */
enum Style {
	ERROR("31;1"),
	WARNING("33;1"),
	ADVICE("36"),
	PLACE("1"),
	ASIDE("2"),
	GOOD("32");

	private final String code;

	Style(String code) {
		this.code = code;
	}

	/** The text in this style, with the control sequences of ECMA-48 if the reader wants colour. */
	String of(String text, boolean coloured) {
		return coloured ? "\u001b[" + code + "m" + text + "\u001b[0m" : text;
	}
}
