/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.conductor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.CrossSection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Holds the computed resistance of copper against published tables.
 */
class CopperConductorTest {

	private static final double METRES_IN_1000_FEET = 304.8;

	/**
	 * The copper wire table of the National Bureau of Standards, ohm per 1000 ft at 20 °C, as a public wire-gauge table
	 * (source key W-1) reprints it. The table has four digits.
	 */
	@ParameterizedTest
	@CsvSource({ "10, 0.9989", "12, 1.588", "14, 2.525", "15, 3.184", "16, 4.016", "18, 6.385", "20, 10.15", "22, 16.14", "24, 25.67" })
	void gaugesFollowTheCopperWireTable(int gauge, double ohmsPer1000Feet) {
		double computed = CopperConductor.resistance(new AmericanWireGauge(gauge)).ohmsPerMetre() * METRES_IN_1000_FEET;
		assertEquals(ohmsPer1000Feet, computed, ohmsPer1000Feet * 5e-4);
	}

	/** Diameters of the same public table, in mm. */
	@ParameterizedTest
	@CsvSource({ "10, 2.588", "14, 1.628", "16, 1.291", "18, 1.024", "20, 0.812", "22, 0.644", "24, 0.511" })
	void gaugesHaveTheDiametersOfTheTable(int gauge, double millimetres) {
		assertEquals(millimetres, CopperConductor.diameterMillimetres(new AmericanWireGauge(gauge)), 0.0006);
	}

	/**
	 * ASTM B258 (from memory) fixes two diameters, 0.0050 in for gauge 36 and 0.4600 in for gauge 0000, and puts 38 equally
	 * rising ones between them. Gauge 0 is three of the 39 steps below the greater one.
	 */
	@Test
	void gaugesStandBetweenTheTwoThatTheStandardFixes() {
		assertEquals(0.0050, inches(36), 1e-12);
		double step = Math.pow(0.4600 / 0.0050, 1 / 39.0);
		assertEquals(0.4600, inches(0) * step * step * step, 1e-9);
		for (int gauge = 1; gauge <= 40; gauge++) {
			assertEquals(step, inches(gauge - 1) / inches(gauge), 1e-9, "gauge " + gauge);
		}
	}

	private static double inches(int gauge) {
		return CopperConductor.diameterMillimetres(new AmericanWireGauge(gauge)) / 25.4;
	}

	/** Areas of the public wire-gauge table (W-1), in circular mil: the square of the diameter in thousandths of an inch. */
	@ParameterizedTest
	@CsvSource({ "10, 10383", "12, 6530", "14, 4107", "15, 3257", "16, 2583", "18, 1624", "20, 1022", "22, 642", "24, 404" })
	void gaugesHaveTheAreasOfTheTable(int gauge, double circularMils) {
		double squareMillimetresOfACircularMil = Math.PI / 4 * 0.0254 * 0.0254;
		double computed = CopperConductor.squareMillimetres(new AmericanWireGauge(gauge)) / squareMillimetresOfACircularMil;
		assertEquals(circularMils, computed, 1, gauge + " AWG");
	}

	/** NEC chapter 9, table 8 (from memory): solid uncoated copper at 75 °C, ohm per 1000 ft, three digits: half a percent. */
	@ParameterizedTest
	@CsvSource({ "10, 1.21", "12, 1.93", "14, 3.07", "16, 4.89", "18, 7.77" })
	void hotGaugesFollowTheTableForInstallers(int gauge, double ohmsPer1000Feet) {
		double computed = CopperConductor.resistance(new AmericanWireGauge(gauge), 75).ohmsPerMetre() * METRES_IN_1000_FEET;
		assertEquals(ohmsPer1000Feet, computed, ohmsPer1000Feet * 5e-3);
	}

	/** Stranded conductors, ohm per 1000 ft, of a public teaching page on conductor resistance: one to three percent above solid copper. */
	@ParameterizedTest
	@CsvSource({ "14, 2.573", "16, 4.091", "18, 6.505", "20, 10.34", "22, 16.45", "24, 26.15" })
	void strandedGaugesHaveALittleMoreThanSolidOnes(int gauge, double strandedOhmsPer1000Feet) {
		double solid = CopperConductor.resistance(new AmericanWireGauge(gauge)).ohmsPerMetre() * METRES_IN_1000_FEET;
		double more = strandedOhmsPer1000Feet / solid;
		assertEquals(true, more > 1.01 && more < 1.03, gauge + " AWG: " + more);
	}

	/** IEC 60228, fine strands (class 5, plain), as the same pages (W-2) reprint it: they may have more than class 1 and 2. */
	@ParameterizedTest
	@CsvSource({ "0.5, 39.0", "0.75, 26.0", "1.0, 19.5", "1.5, 13.3", "2.5, 7.98", "4, 4.95", "6, 3.30" })
	void fineStrandsMayHaveAnEighthMore(double area, double mostOhmsPerKilometre) {
		double computed = CopperConductor.resistance(new CrossSection(area)).ohmsPerMetre() * 1000;
		assertEquals(0.875, computed / mostOhmsPerKilometre, 0.013, computed + " ohm/km");
	}

	/**
	 * IEC 60228 states the most that a stranded plain conductor of class 1 or 2 may have at 20 °C, in ohm per km, as two
	 * public cable-engineering pages (W-2) reprint it. Solid copper of the nominal area has less, and not much less.
	 */
	@ParameterizedTest
	@CsvSource({ "0.5, 36.0", "0.75, 24.5", "1.0, 18.1", "1.5, 12.1", "2.5, 7.41", "4, 4.61", "6, 3.08" })
	void crossSectionsStayBelowTheStandardsMaximum(double area, double mostOhmsPerKilometre) {
		double computed = CopperConductor.resistance(new CrossSection(area)).ohmsPerMetre() * 1000;
		assertEquals(true, computed < mostOhmsPerKilometre && computed > 0.9 * mostOhmsPerKilometre, computed + " ohm/km");
	}

	/**
	 * The reduction factors that are printed with the same tables: a resistance measured at 50 °C times 0.893 is that at
	 * 20 °C. They use 0.004 per kelvin, copper has 0.00393, which makes 0.3 % at 70 °C.
	 */
	@ParameterizedTest
	@CsvSource({ "30, 0.962", "40, 0.926", "50, 0.893", "60, 0.862", "70, 0.833" })
	void heatRaisesTheResistanceAsThePublishedFactorsSay(double celsius, double factor) {
		AmericanWireGauge gauge = new AmericanWireGauge(22);
		double cold = CopperConductor.resistance(gauge).ohmsPerMetre();
		assertEquals(factor, cold / CopperConductor.resistance(gauge, celsius).ohmsPerMetre(), 0.004);
	}

	/** A cable maker's table (DN-C p. 46) gives 57.4 ohm per km for the power pair of light cable, 22 AWG stranded and tinned. */
	@Test
	void aRealCableHasMoreThanSolidCopper() {
		double solid = CopperConductor.resistance(new AmericanWireGauge(22)).ohmsPerMetre() * 1000;
		assertEquals(57.4, solid, 57.4 * 0.09);
		assertEquals(true, solid < 57.4);
	}
}
