/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import hullwright.quantity.Voltage;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The look for NaN finds it, or the tests that rely on it would assert nothing.
 */
class EveryNumberTest {

	private record Inner(Voltage voltage, double[] row) {
	}

	private record Outer(List<Optional<Inner>> list, Map<String, Inner> map) {
	}

	@Test
	void findsWhatIsNoNumberWhereverItLies() {
		Inner sound = new Inner(new Voltage(12), new double[] { 1 });
		Inner inList = new Inner(new Voltage(Double.NaN), new double[] { 1 });
		Inner inMap = new Inner(new Voltage(12), new double[] { 1, Double.POSITIVE_INFINITY });

		assertEquals(List.of("[list, 1, voltage, volts] = NaN", "[map, key, row, 1] = Infinity"),
				EveryNumber.notFiniteIn(new Outer(List.of(Optional.of(sound), Optional.of(inList)), Map.of("key", inMap))));
		assertEquals(List.of(), EveryNumber.notFiniteIn(sound));
	}

	@Test
	void findsThatThereIsNothingToLookAt() {
		assertThrows(AssertionError.class, () -> EveryNumber.notFiniteIn("text"));
	}
}
