/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import hullwright.documents.scene.Ink;
import hullwright.documents.scene.LetterWidths;
import hullwright.documents.scene.Stroke;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;

/**
 * Explains the symbols, in rows under the drawing.
 */
final class Legend {

	private static final double ROW = 34;
	private static final double SYMBOL = 46;
	private static final double GAP = 26;
	private static final double SIZE = 10;
	private static final Ink LINE = Ink.NETWORK_1;

	/** Draws a symbol around a place. */
	@FunctionalInterface
	private interface Symbol {
		void draw(Pencil pencil, double x, double y);
	}

	private record Entry(String text, Symbol symbol) {
	}

	private final List<Entry> entries = new ArrayList<>();

	Legend() {
		entry("terminator", (pencil, x, y) -> PartSymbol.TERMINATOR.draw(pencil, x, y, 24, LINE, true));
		entry("tee or block: port taken, open, capped", Legend::tee);
		entry("power tap", (pencil, x, y) -> PartSymbol.TAP.draw(pencil, x, y - 2, 24, LINE, true));
		entry("isolator", (pencil, x, y) -> PartSymbol.ISOLATOR.draw(pencil, x, y, 24, LINE, true));
		entry("through a bulkhead", (pencil, x, y) -> PartSymbol.WALL.draw(pencil, x, y, 30, LINE, true));
		entry("adapter", (pencil, x, y) -> PartSymbol.ADAPTER.draw(pencil, x, y, 30, LINE, true));
		entry("shield to earth", (pencil, x, y) -> PartSymbol.earth(pencil, x, y));
		entry("backbone", line(Stroke.of(LINE, 4)));
		entry("drop", line(Stroke.of(LINE, 1.6)));
		entry("serial line", line(new Stroke(Ink.SERIAL, 1.6, Stroke.Dash.LONG)));
		entry("radio link", line(new Stroke(Ink.RADIO, 1.8, Stroke.Dash.DOTS)));
		entry("device, with its lowest voltage and what is left", Legend::card);
		entry("prepared", Legend::prepared);
		entry("error", (pencil, x, y) -> pencil.mark(x, y, Severity.ERROR));
		entry("warning", (pencil, x, y) -> pencil.mark(x, y, Severity.WARNING));
		entry("advice", (pencil, x, y) -> pencil.mark(x, y, Severity.ADVICE));
	}

	private void entry(String text, Symbol symbol) {
		entries.add(new Entry(text, symbol));
	}

	/**
	 * Draws it.
	 *
	 * @param left where its rows begin
	 * @param top where the first row begins
	 * @param right where its rows must end
	 * @return where the last row ends
	 */
	double draw(Pencil page, double left, double top, double right) {
		double x = left;
		double y = top + ROW / 2;
		for (Entry entry : entries) {
			double width = SYMBOL + LetterWidths.of(entry.text, SIZE, false) + GAP;
			if (x > left && x + width > right) {
				x = left;
				y += ROW;
			}
			entry.symbol.draw(page, x + SYMBOL / 2 - 4, y);
			page.text(x + SYMBOL, y + 4, entry.text, SIZE, Ink.SOFT_TEXT);
			x += width;
		}
		return y + ROW / 2;
	}

	private static void tee(Pencil pencil, double x, double y) {
		PartSymbol.TEE.draw(pencil, x, y, 38, LINE, true);
		pencil.disc(x - 11, y - 11, 3, LINE, null);
		pencil.disc(x, y - 11, 3, Ink.GROUND, Stroke.of(LINE, 1.5));
		pencil.box(x + 7.5, y - 15, 7, 5, 1, Ink.THING_EDGE, null);
	}

	private static Symbol line(Stroke stroke) {
		return (pencil, x, y) -> pencil.line(stroke, x - 17, y, x + 17, y);
	}

	private static void card(Pencil pencil, double x, double y) {
		pencil.box(x - 17, y - 9, 34, 18, 3, Ink.THING, Stroke.of(Ink.THING_EDGE, 1));
	}

	private static void prepared(Pencil pencil, double x, double y) {
		pencil.box(x - 17, y - 9, 34, 18, 3, Ink.THING, new Stroke(Ink.THING_EDGE, 1, Stroke.Dash.SHORT));
	}
}
