/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import hullwright.quantity.Quantity;

/**
 * A value that a rule works with and a profile can set, beside its severities and limits.
 *
 * @param name its name, as a profile writes it
 * @param usual its value where no profile says otherwise: a quantity, or an Integer where something is counted
 * @param meaning what it does, in half a sentence: "how much of a supply's rating is kept for growth"
 * @param source where the usual value was read
 */
public record Parameter(String name, Object usual, String meaning, String source) {

	public Parameter {
		if (!(usual instanceof Quantity) && !(usual instanceof Integer)) {
			throw new IllegalArgumentException("parameter " + name + " is neither a quantity nor a whole number: " + usual);
		}
	}

	/** Whether a value can stand for it: a quantity of the same kind, or a count. */
	public boolean takes(Object value) {
		return usual instanceof Quantity quantity
				? value instanceof Quantity other && other.dimension() == quantity.dimension()
				: value instanceof Integer count && count >= 0;
	}

	/** What a value for it looks like, for people: {@code a length, such as '6 m'}. */
	public String example() {
		return usual instanceof Quantity quantity ? quantity.dimension().label() + ", such as '" + quantity + "'" : "a whole number, such as '" + usual + "'";
	}
}
