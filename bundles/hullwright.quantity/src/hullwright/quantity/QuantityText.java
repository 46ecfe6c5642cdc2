/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads quantities from text and writes them, a number and a unit: {@code 6 m}, {@code 57 mohm/m}, {@code 22 AWG}.
 */
public final class QuantityText {

	private static final Pattern NUMBER_AND_UNIT = Pattern.compile("\\s*(-?\\d+(?:\\.\\d+)?)\\s*(\\S.*?)?\\s*");

	/** Digits beyond these are rounding noise of the arithmetic, not information. */
	private static final MathContext SHOWN_DIGITS = new MathContext(4);

	private QuantityText() {
	}

	/**
	 * Reads a quantity of a known kind.
	 *
	 * @throws QuantityFormatException if the text is no number with a unit of that kind, or the number is negative
	 */
	public static Quantity parse(String text, Dimension expected) throws QuantityFormatException {
		Matcher matcher = match(text, expected);
		String unitText = matcher.group(2);
		if (unitText == null) {
			throw QuantityFormatException.unitMissing(matcher.group(1), expected);
		}
		Unit unit = Unit.of(unitText).orElseThrow(() -> QuantityFormatException.unitUnknown(unitText, expected));
		if (unit.dimension() != expected) {
			throw QuantityFormatException.wrongKind(text.strip(), unit.dimension(), expected);
		}
		return quantity(matcher.group(1), unit, expected);
	}

	/**
	 * Reads a quantity of whatever kind its unit says.
	 *
	 * @throws QuantityFormatException if the text is no number with a known unit, or the number is negative
	 */
	public static Quantity parse(String text) throws QuantityFormatException {
		Matcher matcher = match(text, Dimension.LENGTH);
		Optional<Unit> unit = Optional.ofNullable(matcher.group(2)).flatMap(Unit::of);
		Dimension dimension = unit.map(Unit::dimension).orElse(Dimension.LENGTH);
		return parse(text, dimension);
	}

	/**
	 * Reads a quantity of one of several kinds.
	 *
	 * @param text the text
	 * @param what what the quantity is, in words: {@code load}
	 * @param allowed the kinds, the likeliest first
	 * @throws QuantityFormatException if the text is no number with a unit of one of those kinds, or the number is negative
	 */
	public static Quantity parse(String text, String what, List<Dimension> allowed) throws QuantityFormatException {
		Matcher matcher = match(text, allowed.get(0));
		if (matcher.group(2) == null) {
			throw QuantityFormatException.unitMissing(matcher.group(1), what, allowed.get(0));
		}
		Optional<Dimension> kind = Unit.of(matcher.group(2)).map(Unit::dimension);
		if (kind.filter(allowed::contains).isEmpty()) {
			throw QuantityFormatException.noneOf(text.strip(), what, allowed);
		}
		return parse(text, kind.get());
	}

	/**
	 * Reads the share of a whole: a percentage above zero and not above a hundred.
	 *
	 * @param text the text
	 * @param what what the share is, in words: {@code efficiency}
	 * @throws QuantityFormatException if the text is no such percentage
	 */
	public static Ratio parseShare(String text, String what) throws QuantityFormatException {
		Matcher matcher = match(text, Dimension.RATIO);
		if (matcher.group(2) == null) {
			double bare = Double.parseDouble(matcher.group(1));
			// nobody means less than one per cent: such a number was meant as a fraction
			boolean fraction = bare > 0 && bare <= 1;
			throw QuantityFormatException.unitMissing(fraction ? number(bare * 100) : matcher.group(1), what, Dimension.RATIO);
		}
		Ratio share = (Ratio) parse(text, Dimension.RATIO);
		if (share.fraction() <= 0 || share.fraction() > 1) {
			throw QuantityFormatException.noShare(text.strip(), what);
		}
		return share;
	}

	private static Matcher match(String text, Dimension expected) throws QuantityFormatException {
		Matcher matcher = NUMBER_AND_UNIT.matcher(text);
		if (!matcher.matches()) {
			throw QuantityFormatException.notANumber(text, expected);
		}
		return matcher;
	}

	private static Quantity quantity(String number, Unit unit, Dimension expected) throws QuantityFormatException {
		if (number.startsWith("-")) {
			throw QuantityFormatException.negative(number + " " + unit.symbol(), expected);
		}
		try {
			double value = Double.parseDouble(number);
			Quantity quantity = unit.quantity(value);
			boolean beyondAllMeasure = Double.isInfinite(value)
					|| quantity instanceof ScalarQuantity<?> scalar && Double.isInfinite(scalar.si());
			if (!beyondAllMeasure) {
				return quantity;
			}
		} catch (IllegalArgumentException e) {
			// no such wire gauge
		}
		throw QuantityFormatException.notANumber(number + " " + unit.symbol(), expected);
	}

	/** Writes a quantity with the unit in which the trade gives it, at most four significant digits. */
	public static String format(Quantity quantity) {
		if (quantity instanceof Length length) {
			return number(length.metres()) + " m";
		} else if (quantity instanceof Voltage voltage) {
			return number(voltage.volts()) + " V";
		} else if (quantity instanceof Current current) {
			return number(current.amperes()) + " A";
		} else if (quantity instanceof Power power) {
			return number(power.watts()) + " W";
		} else if (quantity instanceof Duration duration) {
			double seconds = Math.abs(duration.seconds());
			return seconds > 0 && seconds < 1e-5 ? number(duration.seconds() * 1e9) + " ns"
					: seconds < 1 ? number(duration.seconds() * 1000) + " ms" : number(duration.seconds()) + " s";
		} else if (quantity instanceof BitRate rate) {
			return number(rate.bitsPerSecond()) + " baud";
		} else if (quantity instanceof Resistance resistance) {
			double ohms = Math.abs(resistance.ohms());
			return ohms < 1 ? number(resistance.ohms() * 1000) + " mohm"
					: ohms < 10_000 || Double.isInfinite(ohms) ? number(resistance.ohms()) + " ohm" : number(resistance.ohms() / 1000) + " kohm";
		} else if (quantity instanceof ResistancePerLength perLength) {
			return number(perLength.ohmsPerMetre() * 1000) + " mohm/m";
		} else if (quantity instanceof DelayPerLength delay) {
			return number(delay.secondsPerMetre() * 1e9) + " ns/m";
		} else if (quantity instanceof Ratio ratio) {
			return number(ratio.fraction() * 100) + " %";
		} else if (quantity instanceof AmericanWireGauge gauge) {
			return gauge.number() + " AWG";
		}
		return number(((CrossSection) quantity).squareMillimetres()) + " mm2";
	}

	/** A number as it is shown before a unit, at most four significant digits. */
	static String number(double value) {
		if (!Double.isFinite(value)) {
			return String.valueOf(value).toLowerCase(Locale.ROOT);
		}
		BigDecimal rounded = new BigDecimal(value).round(SHOWN_DIGITS).stripTrailingZeros();
		return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
	}

	/** The units of a dimension as a person lists them: {@code m, mm, cm, km, ft or in}. */
	static String unitsOf(Dimension dimension) {
		String list = Unit.of(dimension).stream().map(Unit::symbol).collect(Collectors.joining(", "));
		int last = list.lastIndexOf(", ");
		return last < 0 ? list : list.substring(0, last) + " or " + list.substring(last + 2);
	}
}
