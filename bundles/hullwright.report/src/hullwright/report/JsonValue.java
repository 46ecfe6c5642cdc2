/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import com.google.gson.JsonObject;
import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.CrossSection;
import hullwright.quantity.ScalarQuantity;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Writes a value: a quantity under its name and unit, anything else under its name.
 */
public final class JsonValue {

	/** Digits beyond these are noise of binary fractions: 6.8 m is written as 6.8. */
	private static final MathContext DIGITS = new MathContext(12);

	private JsonValue() {
	}

	/** Adds a value under its name, a quantity with its unit after it. */
	public static void add(JsonObject json, String name, Object value) {
		if (value instanceof ScalarQuantity<?> quantity) {
			BigDecimal rounded = new BigDecimal(quantity.si()).round(DIGITS).stripTrailingZeros();
			json.addProperty(name + "_" + unit(quantity), rounded.scale() < 0 ? rounded.setScale(0) : rounded);
		} else if (value instanceof AmericanWireGauge gauge) {
			json.addProperty(name + "_awg", gauge.number());
		} else if (value instanceof CrossSection area) {
			json.addProperty(name + "_mm2", area.squareMillimetres());
		} else if (value instanceof Number number) {
			json.addProperty(name, number);
		} else {
			json.addProperty(name, value.toString());
		}
	}

	/** The SI unit of a quantity as keys write it. */
	private static String unit(ScalarQuantity<?> quantity) {
		return switch (quantity.dimension()) {
		case LENGTH -> "m";
		case VOLTAGE -> "V";
		case CURRENT -> "A";
		case POWER -> "W";
		case RESISTANCE -> "ohm";
		case RESISTANCE_PER_LENGTH -> "ohm_per_m";
		case DELAY_PER_LENGTH -> "s_per_m";
		case DURATION -> "s";
		case BIT_RATE -> "bit_per_s";
		case RATIO -> "share";
		case CONDUCTOR_SIZE -> throw new IllegalArgumentException("a size is no quantity of one unit: " + quantity);
		};
	}
}
