/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * The units in which quantities may be written. The first unit of a dimension is the one to propose when it is missing.
 * The foot and the inch are those of the international agreement of 1959 (0.3048 m, 25.4 mm).
 */
public enum Unit {
	METRE("m", Dimension.LENGTH, Length::new),
	MILLIMETRE("mm", Dimension.LENGTH, v -> new Length(v / 1000)),
	CENTIMETRE("cm", Dimension.LENGTH, v -> new Length(v / 100)),
	KILOMETRE("km", Dimension.LENGTH, v -> new Length(v * 1000)),
	FOOT("ft", Dimension.LENGTH, v -> new Length(v * 0.3048)),
	INCH("in", Dimension.LENGTH, v -> new Length(v * 0.0254)),

	VOLT("V", Dimension.VOLTAGE, Voltage::new),
	MILLIVOLT("mV", Dimension.VOLTAGE, v -> new Voltage(v / 1000)),

	AMPERE("A", Dimension.CURRENT, Current::new),
	MILLIAMPERE("mA", Dimension.CURRENT, v -> new Current(v / 1000)),
	LOAD_EQUIVALENCY_NUMBER("LEN", Dimension.CURRENT, v -> new Current(v * Current.LEN.amperes())),

	WATT("W", Dimension.POWER, Power::new),
	MILLIWATT("mW", Dimension.POWER, v -> new Power(v / 1000)),

	OHM("ohm", Dimension.RESISTANCE, Resistance::new),
	OHM_SIGN("Ω", Dimension.RESISTANCE, Resistance::new),
	MILLIOHM("mohm", Dimension.RESISTANCE, v -> new Resistance(v / 1000)),
	KILOOHM("kohm", Dimension.RESISTANCE, v -> new Resistance(v * 1000)),

	MILLIOHM_PER_METRE("mohm/m", Dimension.RESISTANCE_PER_LENGTH, v -> new ResistancePerLength(v / 1000)),
	OHM_PER_METRE("ohm/m", Dimension.RESISTANCE_PER_LENGTH, ResistancePerLength::new),
	OHM_PER_KILOMETRE("ohm/km", Dimension.RESISTANCE_PER_LENGTH, v -> new ResistancePerLength(v / 1000)),

	NANOSECOND_PER_METRE("ns/m", Dimension.DELAY_PER_LENGTH, v -> new DelayPerLength(v / 1e9)),

	SECOND("s", Dimension.DURATION, Duration::new),
	MILLISECOND("ms", Dimension.DURATION, v -> new Duration(v / 1000)),
	MICROSECOND("us", Dimension.DURATION, v -> new Duration(v / 1e6)),
	NANOSECOND("ns", Dimension.DURATION, v -> new Duration(v / 1e9)),
	MINUTE("min", Dimension.DURATION, v -> new Duration(v * 60)),
	HOUR("h", Dimension.DURATION, v -> new Duration(v * 3600)),

	BAUD("baud", Dimension.BIT_RATE, BitRate::new),
	KILOBIT_PER_SECOND("kbit/s", Dimension.BIT_RATE, v -> new BitRate(v * 1000)),

	PER_CENT("%", Dimension.RATIO, v -> new Ratio(v / 100)),

	SQUARE_MILLIMETRE("mm2", Dimension.CONDUCTOR_SIZE, CrossSection::new),
	SQUARE_MILLIMETRE_SIGN("mm²", Dimension.CONDUCTOR_SIZE, CrossSection::new),
	WIRE_GAUGE("AWG", Dimension.CONDUCTOR_SIZE, Unit::wireGauge);

	private final String symbol;
	private final Dimension dimension;
	private final DoubleFunction<Quantity> reading;

	Unit(String symbol, Dimension dimension, DoubleFunction<Quantity> reading) {
		this.symbol = symbol;
		this.dimension = dimension;
		this.reading = reading;
	}

	/** How the unit is written. */
	public String symbol() {
		return symbol;
	}

	/** What it measures. */
	public Dimension dimension() {
		return dimension;
	}

	/**
	 * The unit with this symbol, if there is one. Upper and lower case matter: mm is no Mm. Signs that Unicode calls
	 * equivalent are the same, such as the ohm sign and the Greek letter.
	 */
	public static Optional<Unit> of(String symbol) {
		String composed = Normalizer.normalize(symbol, Normalizer.Form.NFC);
		return Arrays.stream(values()).filter(unit -> unit.symbol.equals(composed)).findFirst();
	}

	/** All units of a dimension, the most usual first. */
	public static List<Unit> of(Dimension dimension) {
		return Arrays.stream(values()).filter(unit -> unit.dimension == dimension).toList();
	}

	/** The quantity of this many units. */
	Quantity quantity(double number) {
		return reading.apply(number);
	}

	private static Quantity wireGauge(double number) {
		if (number != Math.rint(number) || number < 0 || number > AmericanWireGauge.THINNEST) {
			throw new IllegalArgumentException("a wire gauge is a whole number from 0 to " + AmericanWireGauge.THINNEST);
		}
		return new AmericanWireGauge((int) number);
	}
}
