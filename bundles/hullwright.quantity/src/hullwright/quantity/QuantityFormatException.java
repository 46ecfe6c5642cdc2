/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A text that is no quantity of the kind that was expected. The message is meant for the person who wrote the text; the
 * reason and the proposal let an editor offer a mend.
 */
public final class QuantityFormatException extends Exception {

	private static final long serialVersionUID = 1L;

	/** What is wrong with the text. */
	public enum Reason {
		/** There is a number and nothing else. */
		UNIT_MISSING,
		/** The unit is none that is known. */
		UNIT_UNKNOWN,
		/** The unit measures something else. */
		WRONG_KIND,
		/** The number is below zero. */
		NEGATIVE,
		/** There is no number, or none that the unit allows. */
		NOT_A_NUMBER,
		/** The number is beyond what can be. */
		OUT_OF_RANGE
	}

	private final Reason reason;
	private final String proposal;

	private QuantityFormatException(Reason reason, String message, String proposal) {
		super(message);
		this.reason = reason;
		this.proposal = proposal;
	}

	/** What is wrong. */
	public Reason reason() {
		return reason;
	}

	/** A text that would be right and is likely what was meant, or empty if nothing is likely. */
	public String proposal() {
		return proposal;
	}

	static QuantityFormatException unitMissing(String number, Dimension expected) {
		return unitMissing(number, expected.label(), expected);
	}

	static QuantityFormatException unitMissing(String number, String what, Dimension likeliest) {
		String proposal = number + " " + Unit.of(likeliest).get(0).symbol();
		return new QuantityFormatException(Reason.UNIT_MISSING,
				withArticle(what) + " needs a unit, for example '" + proposal + "'", proposal);
	}

	static QuantityFormatException unitUnknown(String unit, Dimension expected) {
		return new QuantityFormatException(Reason.UNIT_UNKNOWN, "unknown unit '" + unit + "'; a " + expected.label()
				+ " is given in " + QuantityText.unitsOf(expected), "");
	}

	static QuantityFormatException wrongKind(String text, Dimension found, Dimension expected) {
		return new QuantityFormatException(Reason.WRONG_KIND, "'" + text + "' is a " + found.label() + ", but a "
				+ expected.label() + " is expected, for example '" + expected.example() + "'", "");
	}

	static QuantityFormatException noneOf(String text, String what, List<Dimension> allowed) {
		String units = allowed.stream().flatMap(kind -> Unit.of(kind).stream()).map(Unit::symbol).collect(Collectors.joining(", "));
		return new QuantityFormatException(Reason.WRONG_KIND, "'" + text + "' is no " + what + "; one is given in " + units, "");
	}

	static QuantityFormatException negative(String text, Dimension expected) {
		return new QuantityFormatException(Reason.NEGATIVE,
				"'" + text + "': a " + expected.label() + " cannot be negative", text.substring(1));
	}

	static QuantityFormatException noShare(String text, String what) {
		return new QuantityFormatException(Reason.OUT_OF_RANGE,
				"'" + text + "': " + withArticle(what) + " is above 0 % and at most 100 %", "");
	}

	private static String withArticle(String what) {
		return ("aeiou".indexOf(what.charAt(0)) >= 0 ? "an " : "a ") + what;
	}

	static QuantityFormatException notANumber(String text, Dimension expected) {
		return new QuantityFormatException(Reason.NOT_A_NUMBER, "'" + text + "' is no " + expected.label()
				+ "; write one as '" + expected.example() + "'", "");
	}
}
