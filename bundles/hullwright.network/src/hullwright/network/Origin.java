/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

/**
 * Where something comes from: the element that it is, and its place in the text.
 *
 * @param element the qualified name of the element, its identity across revisions; never null
 * @param file the file, relative to the project with '/' between folders, or empty if it is in no file
 * @param offset the place in the file, in characters from its start
 * @param length how many characters it spans
 * @param line the line, counted from 1, or 0 without a file
 * @param column the column, counted from 1, or 0 without a file
 */
public record Origin(String element, String file, int offset, int length, int line, int column) {

	/** The origin of something that no file holds. */
	public static Origin nowhere(String element) {
		return new Origin(element, "", 0, 0, 0, 0);
	}

	/** The same element, shown at the place of another. */
	public Origin shownAt(Origin place) {
		return new Origin(element, place.file, place.offset, place.length, place.line, place.column);
	}

	/** The last part of the qualified name, as the text writes it. */
	public String simpleName() {
		return element.substring(element.lastIndexOf('.') + 1);
	}
}
