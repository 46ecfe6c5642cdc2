/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.quantity.QuantityFormatException.Reason;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Quantities as people write them. */
class ReadingTest {

	@ParameterizedTest
	@CsvSource({
			"LENGTH, 6 m, 6", "LENGTH, 6m, 6", "LENGTH, '  6   m ', 6", "LENGTH, 0.5 m, 0.5", "LENGTH, 006 m, 6", "LENGTH, 0 m, 0",
			"LENGTH, 250 mm, 0.25", "LENGTH, 25 cm, 0.25", "LENGTH, 0.1 km, 100",
			"VOLTAGE, 12 V, 12", "VOLTAGE, 500 mV, 0.5",
			"CURRENT, 3 A, 3", "CURRENT, 150 mA, 0.15",
			"RESISTANCE, 120 ohm, 120", "RESISTANCE, 120 Ω, 120", "RESISTANCE, 5 mohm, 0.005", "RESISTANCE, 30 kohm, 30000",
			"RESISTANCE_PER_LENGTH, 57 mohm/m, 0.057", "RESISTANCE_PER_LENGTH, 57.4 ohm/km, 0.0574", "RESISTANCE_PER_LENGTH, 0.057 ohm/m, 0.057",
			"DELAY_PER_LENGTH, 4.46 ns/m, 4.46e-9",
			"RATIO, 85 %, 0.85", "RATIO, 85%, 0.85", "RATIO, 120 %, 1.2" })
	void inSiUnits(Dimension kind, String text, double si) throws QuantityFormatException {
		assertEquals(si, ((ScalarQuantity<?>) QuantityText.parse(text, kind)).si(), 1e-12 * Math.max(1e-9, si));
	}

	/** International yard and pound agreement of 1959: a foot is 0.3048 m, an inch 25.4 mm, both exactly. */
	@ParameterizedTest
	@CsvSource({ "1 ft, 0.3048", "1 in, 0.0254", "20 ft, 6.096", "328 ft, 99.9744", "256 ft, 78.0288" })
	void feetAndInches(String text, double metres) throws QuantityFormatException {
		assertEquals(metres, ((Length) QuantityText.parse(text, Dimension.LENGTH)).metres(), 1e-12);
	}

	/** The guides give each limit in both units; the feet are rounded, never by more than half a foot. */
	@ParameterizedTest
	@CsvSource({ "20 ft, 6", "256 ft, 78", "328 ft, 100" })
	void theLimitsOfTheGuidesInBothUnits(String feet, double metres) throws QuantityFormatException {
		assertEquals(metres, ((Length) QuantityText.parse(feet, Dimension.LENGTH)).metres(), 0.1524);
	}

	@Test
	void conductorSizes() throws QuantityFormatException {
		assertEquals(new AmericanWireGauge(22), QuantityText.parse("22 AWG", Dimension.CONDUCTOR_SIZE));
		assertEquals(new AmericanWireGauge(0), QuantityText.parse("0 AWG", Dimension.CONDUCTOR_SIZE));
		assertEquals(new CrossSection(1.5), QuantityText.parse("1.5 mm2", Dimension.CONDUCTOR_SIZE));
		assertEquals(new CrossSection(1.5), QuantityText.parse("1.5 mm²", Dimension.CONDUCTOR_SIZE));
	}

	/** The Greek letter U+03A9 and the ohm sign U+2126 are equivalent in Unicode. */
	@Test
	void bothOhmSigns() throws QuantityFormatException {
		assertEquals(new Resistance(120), QuantityText.parse("120 \u03A9", Dimension.RESISTANCE));
		assertEquals(new Resistance(120), QuantityText.parse("120 \u2126", Dimension.RESISTANCE));
	}

	@Test
	void theUnitTellsTheKindWhereAnyWillDo() throws QuantityFormatException {
		assertEquals(new Length(6), QuantityText.parse("6 m"));
		assertEquals(new Voltage(0.5), QuantityText.parse("0.5 V"));
		assertEquals(0.15, ((Current) QuantityText.parse("3 LEN")).amperes(), 1e-12);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			LENGTH                | 6         | UNIT_MISSING | 6 m      | a length needs a unit, for example '6 m'
			CONDUCTOR_SIZE        | 1.5       | UNIT_MISSING | 1.5 mm2  | a conductor size needs a unit, for example '1.5 mm2'
			LENGTH                | 6 metres  | UNIT_UNKNOWN | ''       | unknown unit 'metres'; a length is given in m, mm, cm, km, ft or in
			LENGTH                | 6 M       | UNIT_UNKNOWN | ''       | unknown unit 'M'; a length is given in m, mm, cm, km, ft or in
			VOLTAGE               | 12 v      | UNIT_UNKNOWN | ''       | unknown unit 'v'; a voltage is given in V or mV
			CURRENT               | 3 w       | UNIT_UNKNOWN | ''       | unknown unit 'w'; a current is given in A, mA or LEN
			CURRENT               | 3 W       | WRONG_KIND   | ''       | '3 W' is a power, but a current is expected, for example '3 A'
			DURATION              | 2         | UNIT_MISSING | 2 s      | a duration needs a unit, for example '2 s'
			DURATION              | 2 sec     | UNIT_UNKNOWN | ''       | unknown unit 'sec'; a duration is given in s, ms, us, ns, min or h
			BIT_RATE              | -4800 baud| NEGATIVE     | 4800 baud | '-4800 baud': a bit rate cannot be negative
			DELAY_PER_LENGTH      | 4.46 ns   | WRONG_KIND   | ''       | '4.46 ns' is a duration, but a delay per length is expected, for example '4.46 ns/m'
			LENGTH                | 12 V      | WRONG_KIND   | ''       | '12 V' is a voltage, but a length is expected, for example '6 m'
			RESISTANCE_PER_LENGTH | 57 mohm   | WRONG_KIND   | ''       | '57 mohm' is a resistance, but a resistance per length is expected, for example '57 mohm/m'
			LENGTH                | -6 m      | NEGATIVE     | 6 m      | '-6 m': a length cannot be negative
			CONDUCTOR_SIZE        | 22.5 AWG  | NOT_A_NUMBER | ''       | '22.5 AWG' is no conductor size; write one as '1.5 mm2'
			CONDUCTOR_SIZE        | 41 AWG    | NOT_A_NUMBER | ''       | '41 AWG' is no conductor size; write one as '1.5 mm2'
			LENGTH                | six m     | NOT_A_NUMBER | ''       | 'six m' is no length; write one as '6 m'
			LENGTH                | NaN m     | NOT_A_NUMBER | ''       | 'NaN m' is no length; write one as '6 m'
			LENGTH                | Infinity m| NOT_A_NUMBER | ''       | 'Infinity m' is no length; write one as '6 m'
			LENGTH                | 6. m      | UNIT_UNKNOWN | ''       | unknown unit '. m'; a length is given in m, mm, cm, km, ft or in
			LENGTH                | .5 m      | NOT_A_NUMBER | ''       | '.5 m' is no length; write one as '6 m'
			LENGTH                | 7,5 m     | UNIT_UNKNOWN | ''       | unknown unit ',5 m'; a length is given in m, mm, cm, km, ft or in
			LENGTH                | m         | NOT_A_NUMBER | ''       | 'm' is no length; write one as '6 m'
			LENGTH                | ''        | NOT_A_NUMBER | ''       | '' is no length; write one as '6 m'
			""")
	void whatIsWrongAndWhatWasLikelyMeant(Dimension kind, String text, Reason reason, String proposal, String message) {
		QuantityFormatException wrong = assertThrows(QuantityFormatException.class, () -> QuantityText.parse(text, kind));
		assertEquals(message, wrong.getMessage());
		assertEquals(reason, wrong.reason());
		assertEquals(proposal, wrong.proposal());
	}

	@ParameterizedTest
	@CsvSource({ "85 %, 0.85", "100 %, 1", "99.5%, 0.995", "0.1 %, 0.001" })
	void theShareOfAWhole(String text, double fraction) throws QuantityFormatException {
		assertEquals(fraction, QuantityText.parseShare(text, "efficiency").fraction(), 1e-12);
	}

	/** A share is often written as a fraction of one; the proposal says what that is in per cent. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			85      | UNIT_MISSING | 85 %   | an efficiency needs a unit, for example '85 %'
			0.85    | UNIT_MISSING | 85 %   | an efficiency needs a unit, for example '85 %'
			1       | UNIT_MISSING | 100 %  | an efficiency needs a unit, for example '100 %'
			0 %     | OUT_OF_RANGE | ''     | '0 %': an efficiency is above 0 % and at most 100 %
			100.1 % | OUT_OF_RANGE | ''     | '100.1 %': an efficiency is above 0 % and at most 100 %
			-85 %   | NEGATIVE     | 85 %   | '-85 %': a percentage cannot be negative
			85 W    | WRONG_KIND   | ''     | '85 W' is a power, but a percentage is expected, for example '85 %'
			85 pc   | UNIT_UNKNOWN | ''     | unknown unit 'pc'; a percentage is given in %
			""")
	void whatIsNoShareOfAWhole(String text, Reason reason, String proposal, String message) {
		QuantityFormatException wrong = assertThrows(QuantityFormatException.class, () -> QuantityText.parseShare(text, "efficiency"));
		assertEquals(message, wrong.getMessage());
		assertEquals(reason, wrong.reason());
		assertEquals(proposal, wrong.proposal());
	}

	/** Digits without end are a slip of the hand or an attack; no quantity of the trade is infinite. */
	@Test
	void aNumberBeyondAllMeasureIsNone() {
		String digits = "9".repeat(400);
		QuantityFormatException wrong = assertThrows(QuantityFormatException.class, () -> QuantityText.parse(digits + " m", Dimension.LENGTH));
		assertEquals(Reason.NOT_A_NUMBER, wrong.reason());
		assertThrows(QuantityFormatException.class, () -> QuantityText.parse("9".repeat(306) + " km", Dimension.LENGTH));
		assertThrows(QuantityFormatException.class, () -> QuantityText.parse(digits + " mm2", Dimension.CONDUCTOR_SIZE));
		assertThrows(QuantityFormatException.class, () -> QuantityText.parse(digits + " AWG", Dimension.CONDUCTOR_SIZE));
	}

	@Test
	void aLargeNumberIsReadAsItStands() throws QuantityFormatException {
		assertEquals(new Length(1e12), QuantityText.parse("1000000000000 m", Dimension.LENGTH));
	}

	/** What a message proposes must itself be accepted, or the quick fix makes things worse. */
	@ParameterizedTest
	@EnumSource(Dimension.class)
	void theExampleAndTheProposedUnitOfAKindAreReadable(Dimension kind) throws QuantityFormatException {
		assertEquals(kind, QuantityText.parse(kind.example(), kind).dimension());
		QuantityFormatException bare = assertThrows(QuantityFormatException.class, () -> QuantityText.parse("7", kind));
		assertEquals(kind, QuantityText.parse(bare.proposal(), kind).dimension());
	}

	@ParameterizedTest
	@EnumSource(Unit.class)
	void everyUnitIsFoundByItsSymbolAndReadsOne(Unit unit) throws QuantityFormatException {
		assertEquals(unit, Unit.of(unit.symbol()).orElseThrow());
		assertTrue(Unit.of(unit.dimension()).contains(unit));
		assertEquals(unit.dimension(), QuantityText.parse("1 " + unit.symbol()).dimension());
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "Mm", "MM", "LEN ", "len", "awg", "mm3", "m²" })
	void noUnit(String symbol) {
		assertTrue(Unit.of(symbol).isEmpty());
	}
}
