/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Text that is broken where it would grow wider than a page, with nothing lost.
 */
public final class WrappedText {

	/** How wide a page is, in characters. */
	public static final int PAGE = 110;

	/** After these a name may be broken, if there is no blank to break it at. */
	private static final String JOINTS = ".-/";

	private WrappedText() {
	}

	/**
	 * Breaks a text between words, but not between a number and its unit; within a long name after a dot or a hyphen, and elsewhere only where there is neither.
	 *
	 * @param first what the first line begins with
	 * @param next what the others begin with
	 * @param width how long a line may be, with what it begins with
	 */
	public static List<String> lines(String first, String next, String text, int width) {
		List<String> lines = new ArrayList<>();
		String indent = first;
		String rest = text;
		while (indent.length() + rest.length() > width) {
			int room = Math.max(1, width - indent.length());
			int end = end(rest, room);
			lines.add(indent + rest.substring(0, end));
			rest = rest.substring(end).stripLeading();
			indent = next;
		}
		lines.add(indent + rest);
		return lines;
	}

	private static int end(String text, int room) {
		int blank = text.lastIndexOf(' ', room);
		for (int end = blank; end > 0; end = text.lastIndexOf(' ', end - 1)) {
			if (!Character.isDigit(text.charAt(end - 1))) {
				return end;
			}
		}
		return blank > 0 ? blank : joint(text, room);
	}

	private static int joint(String text, int room) {
		for (int end = room; end > 1; end--) {
			if (JOINTS.indexOf(text.charAt(end - 1)) >= 0) {
				return end;
			}
		}
		return room;
	}
}
