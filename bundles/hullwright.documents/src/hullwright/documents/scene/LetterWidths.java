/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.scene;

/**
 * How wide a text is about, without any font: the picture must be the same on every machine. About what the wider ones of the usual
 * sans-serif faces take, so that nothing runs out of its box.
 */
public final class LetterWidths {

	private static final String NARROW = "iljtfrI.,:;'|!()[] -·";
	private static final String WIDE = "mwMWQOGDHNUC%@—ΩÅ";
	private static final double NARROW_EM = 0.37;
	private static final double USUAL_EM = 0.62;
	private static final double WIDE_EM = 0.86;
	private static final double BOLD = 1.07;

	private LetterWidths() {
	}

	/** The width of a text whose letters have this size. */
	public static double of(String text, double size, boolean bold) {
		double em = 0;
		for (int i = 0; i < text.length(); i++) {
			em += em(text.charAt(i));
		}
		return em * size * (bold ? BOLD : 1);
	}

	/** The text, or as much of its beginning as fits into a width, with an ellipsis. */
	public static String fit(String text, double size, boolean bold, double width) {
		if (of(text, size, bold) <= width) {
			return text;
		}
		int length = text.length();
		while (length > 0 && of(text.substring(0, length) + "…", size, bold) > width) {
			length--;
		}
		return text.substring(0, length).stripTrailing() + "…";
	}

	private static double em(char letter) {
		return NARROW.indexOf(letter) >= 0 ? NARROW_EM : WIDE.indexOf(letter) >= 0 ? WIDE_EM : USUAL_EM;
	}
}
