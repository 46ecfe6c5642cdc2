/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Arithmetic that limits hang on. */
class LoadAndLimitTest {

	/**
	 * One load equivalency number is 50 mA, rounded up, so that 151 mA is 4: a cable maker's public list of questions and
	 * answers, and the field text of the open message dataset ("50 mA per LEN").
	 */
	@ParameterizedTest
	@CsvSource({ "0, 0", "1, 1", "49, 1", "50, 1", "51, 2", "100, 2", "149, 3", "150, 3", "151, 4", "200, 4", "1000, 20", "1001, 21" })
	void loadEquivalencyNumberIsRoundedUp(double milliamperes, int loadEquivalencyNumber) throws QuantityFormatException {
		assertEquals(loadEquivalencyNumber, new Current(milliamperes / 1000).loadEquivalencyNumber());
		assertEquals(loadEquivalencyNumber, ((Current) QuantityText.parse((int) milliamperes + " mA")).loadEquivalencyNumber());
	}

	@Test
	void everyWholeLoadEquivalencyNumberComesBack() throws QuantityFormatException {
		for (int number = 0; number <= 1000; number++) {
			assertEquals(number, ((Current) QuantityText.parse(number + " LEN")).loadEquivalencyNumber());
			assertEquals(number, Stream.generate(() -> Current.LEN).limit(number).reduce(new Current(0), Current::plus).loadEquivalencyNumber());
		}
	}

	/** Six metres in pieces are six metres: binary fractions must not make them more. */
	@Test
	void theSumOfPiecesDoesNotExceedItsLimitByRounding() {
		Length sum = Stream.of(0.4, 4.7, 0.9).map(Length::new).reduce(Length.ZERO, Length::plus);
		assertTrue(sum.metres() > 6, "the example must show the rounding");
		assertFalse(sum.exceeds(new Length(6)));
	}

	@ParameterizedTest
	@CsvSource({ "5.99, false", "6, false", "6.0000001, true", "6.01, true", "6.8, true" })
	void aLimitOfSixMetres(double metres, boolean exceeds) {
		assertEquals(exceeds, new Length(metres).exceeds(new Length(6)));
	}

	/** 20 ft are 6.096 m: over a limit of 6 m although the guides give both for the same thing. */
	@Test
	void twentyFeetAreMoreThanSixMetres() throws QuantityFormatException {
		assertTrue(((Length) QuantityText.parse("20 ft")).exceeds(new Length(6)));
	}

	@Test
	void aLimitOfZero() {
		assertFalse(Length.ZERO.exceeds(Length.ZERO));
		assertTrue(new Length(1e-6).exceeds(Length.ZERO));
	}

	/** What could not be computed exceeds nothing; whoever computes must say so itself. */
	@Test
	void whatIsNoNumberExceedsNothing() {
		assertFalse(new Voltage(Double.NaN).exceeds(new Voltage(1.5)));
		assertTrue(new Voltage(Double.POSITIVE_INFINITY).compareTo(new Voltage(1.5)) > 0);
	}

	@Test
	void sumsDifferencesAndMultiples() {
		assertEquals(new Voltage(2), new Voltage(0.5).plus(new Voltage(1.5)));
		assertEquals(new Voltage(-1), new Voltage(0.5).minus(new Voltage(1.5)));
		assertEquals(new Current(0.25), Current.LEN.times(5));
		assertEquals(4, new Length(6).dividedBy(new Length(1.5)));
		assertTrue(new Length(2).compareTo(new Length(10)) < 0);
	}

	/** DeviceNet operation manual, cable table p. 46: thin cable 57.4 ohm/km, so 100 m of one conductor are 5.74 ohm. */
	@Test
	void resistanceOverALength() {
		assertEquals(5.74, new ResistancePerLength(0.0574).over(new Length(100)).ohms(), 1e-12);
	}

	@ParameterizedTest
	@ValueSource(ints = { -1, 41, Integer.MAX_VALUE, Integer.MIN_VALUE })
	void noSuchWireGauge(int number) {
		assertThrows(IllegalArgumentException.class, () -> new AmericanWireGauge(number));
	}
}
