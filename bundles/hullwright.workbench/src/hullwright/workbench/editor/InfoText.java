/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

/**
 * Text for the window beside a list of proposals, which the platform reads as HTML.
 */
final class InfoText {

	private static final String TAB = "&nbsp;&nbsp;&nbsp;&nbsp;";

	private InfoText() {
	}

	/** The same text with its lines and its indentation. */
	static String of(String plain) {
		return plain.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\t", TAB).replace("\n", "<br/>");
	}
}
