/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Quantities as a report shows them: four digits, the unit of the trade, and readable again. */
class WritingTest {

	@ParameterizedTest
	@CsvSource({
			"6, 6 m", "0.5, 0.5 m", "6.8, 6.8 m", "100, 100 m", "5000, 5000 m", "12345.6, 12350 m", "0, 0 m", "-0.5, -0.5 m",
			"0.00001, 0.00001 m", "3.3333333333, 3.333 m", "0.30000000000000004, 0.3 m", "9.99951, 10 m", "1000000000000, 1000000000000 m" })
	void lengths(double metres, String text) {
		assertEquals(text, new Length(metres).toString());
	}

	@Test
	void eachKindInTheUnitOfTheTrade() {
		assertEquals("12 V", new Voltage(12).toString());
		assertEquals("0.15 A", new Current(0.15).toString());
		assertEquals("120 ohm", new Resistance(120).toString());
		assertEquals("5 mohm", new Resistance(0.005).toString());
		assertEquals("57.4 mohm/m", new ResistancePerLength(0.0574).toString());
		assertEquals("4.46 ns/m", new DelayPerLength(4.46e-9).toString());
		assertEquals("22 AWG", new AmericanWireGauge(22).toString());
		assertEquals("1.5 mm2", new CrossSection(1.5).toString());
		assertEquals("85 %", new Ratio(0.85).toString());
		assertEquals("60 °C", new Temperature(60).toString());
		assertEquals("-12.5 °C", new Temperature(-12.5).toString());
	}

	/** A result that is no number must not look like one. */
	@Test
	void whatIsNoNumberSaysSo() {
		assertEquals("nan V", new Voltage(Double.NaN).toString());
		assertEquals("infinity ohm", new Resistance(Double.POSITIVE_INFINITY).toString());
		assertEquals("-infinity A", new Current(Double.NEGATIVE_INFINITY).toString());
	}

	@ParameterizedTest
	@ValueSource(strings = { "6 m", "0.5 m", "11 V", "3 A", "0.15 A", "120 ohm", "5 mohm", "57.4 mohm/m", "4.46 ns/m", "22 AWG", "1.5 mm2", "2.5 mm2", "85 %", "0.5 %" })
	void whatIsWrittenCanBeReadAgain(String text) throws QuantityFormatException {
		assertEquals(text, QuantityText.format(QuantityText.parse(text)));
	}
}
