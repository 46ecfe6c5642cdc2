/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.fault.FuseCurve;
import hullwright.network.part.Fuse;
import hullwright.quantity.Current;
import hullwright.testkit.BoatText;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The curve of a fuse between the points that its catalog gives: straight on logarithmic axes, as data sheets print them.
 */
class FuseCurveTest {

	private static final Fuse STATED = fuse("""
			opens at 1.35 times rated within 10 min
			opens at 2 times rated within 10 s
			opens at 8 times rated within 100 ms
			""");

	private static final Fuse SILENT = fuse("");

	private static Fuse fuse(String stated) {
		return BoatText.boat("""
				catalog Fuses "Invented" { fuse kind1 { rated 10 A %s } }
				series trial { supply house { 12 V; fuse 10 A of kind1 } }
				""".formatted(stated)).power().supplies().get(0).fuse().orElseThrow();
	}

	/** Half way between 2 and 8 times rated on a logarithmic axis lies 4 times, and half way between 10 s and 100 ms lies 1 s. */
	@ParameterizedTest
	@CsvSource({ "13.5, 600", "20, 10", "40, 1", "80, 0.1", "28.284271247, 3.16227766" })
	void atAndBetweenItsPoints(double amperes, double seconds) {
		assertEquals(seconds, FuseCurve.opensWithin(STATED, new Current(amperes)).orElseThrow().seconds(), seconds * 1e-6);
	}

	/** Beyond 8 times rated, 80 A for 100 ms, it lets no more than 640 A²s through: 500 A for 2.56 ms. */
	@ParameterizedTest
	@CsvSource({ "80, 0.1", "160, 0.025", "500, 0.00256" })
	void beyondItsLastPointItLetsNoMoreEnergyThrough(double amperes, double seconds) {
		assertEquals(seconds, FuseCurve.opensWithin(STATED, new Current(amperes)).orElseThrow().seconds(), seconds * 1e-9);
	}

	@ParameterizedTest
	@CsvSource({ "0", "10", "13.4" })
	void belowItsFirstPointNothingIsPromised(double amperes) {
		assertEquals(Optional.empty(), FuseCurve.opensWithin(STATED, new Current(amperes)));
	}

	@Test
	void withoutACurveNothingIsPromised() {
		assertEquals(Optional.empty(), FuseCurve.opensWithin(SILENT, new Current(1000)));
	}

	/** Catalogs may err; a time is a number all the same, and the larger the current the shorter. */
	@ParameterizedTest
	@ValueSource(strings = {
			"opens at 0 times rated within 10 s; opens at 10 times rated within 1 s",
			"opens at 2 times rated within 0 s; opens at 10 times rated within 0 s",
			"opens at 10 times rated within 100 ms; opens at 2 times rated within 10 s",
			"opens at 2 times rated within 10 s; opens at 2 times rated within 1 s; opens at 10 times rated within 1 s",
			"opens at 2 times rated within 10 s; opens at 4 times rated within 0 s" })
	void aTimeIsANumberWhateverTheCatalogSays(String curve) {
		Fuse fuse = fuse(curve);
		double last = Double.POSITIVE_INFINITY;
		for (double amperes = 0; amperes < 200; amperes += 2.5) {
			double seconds = FuseCurve.opensWithin(fuse, new Current(amperes)).map(within -> within.seconds()).orElse(Double.MAX_VALUE);
			assertTrue(seconds >= 0 && seconds <= last, seconds + " s at " + amperes + " A after " + last + " s");
			last = seconds;
		}
	}
}
