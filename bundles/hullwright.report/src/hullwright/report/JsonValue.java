/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import com.google.gson.JsonObject;
import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.CrossSection;
import hullwright.quantity.Current;
import hullwright.quantity.DelayPerLength;
import hullwright.quantity.Length;
import hullwright.quantity.Quantity;
import hullwright.quantity.Resistance;
import hullwright.quantity.ResistancePerLength;
import hullwright.quantity.ScalarQuantity;
import hullwright.quantity.Voltage;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;

/**
 * Writes a value of a finding: a quantity under its name and unit, anything else under its name.
 */
final class JsonValue {

	/** Digits beyond these are noise of binary fractions: 6.8 m is written as 6.8. */
	private static final MathContext DIGITS = new MathContext(12);

	private static final Map<Class<? extends Quantity>, String> UNITS = Map.of(
			Length.class, "m",
			Voltage.class, "V",
			Current.class, "A",
			Resistance.class, "ohm",
			ResistancePerLength.class, "ohm_per_m",
			DelayPerLength.class, "s_per_m");

	private JsonValue() {
	}

	static void add(JsonObject json, String name, Object value) {
		if (value instanceof ScalarQuantity<?> quantity) {
			BigDecimal rounded = new BigDecimal(quantity.si()).round(DIGITS).stripTrailingZeros();
			json.addProperty(name + "_" + UNITS.get(quantity.getClass()), rounded.scale() < 0 ? rounded.setScale(0) : rounded);
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
}
