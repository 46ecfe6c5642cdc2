/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Cards one above the other. Lines to other places leave at their right sides and rise beside the stack.
 */
final class CardStack {

	static final double GAP = 10;
	/** The distance between lines that run side by side. */
	static final double TRACK = 9;

	/** From the lowest up. */
	final List<Card> cards = new ArrayList<>();
	/** How many lines rise beside it. */
	int risers;
	double x;

	void add(Card card) {
		cards.add(card);
		card.stack = this;
	}

	double height() {
		return cards.isEmpty() ? 0 : cards.size() * (Card.HEIGHT + GAP);
	}

	/** The width of the cards and of what rises beside them. */
	double width() {
		return cards.isEmpty() ? 0 : Card.WIDTH + (risers == 0 ? 0 : (risers + 1) * TRACK);
	}
}
