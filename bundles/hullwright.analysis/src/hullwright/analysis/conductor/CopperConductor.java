/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.conductor;

import hullwright.network.part.Cable;
import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.ConductorSize;
import hullwright.quantity.CrossSection;
import hullwright.quantity.ResistancePerLength;
import hullwright.quantity.Temperature;

/**
 * The resistance of a solid conductor of annealed copper, from its size and temperature.
 */
public final class CopperConductor {

	/** Resistivity of annealed copper at 20 °C in ohm metres: the International Annealed Copper Standard (IEC 60028). */
	static final double RESISTIVITY_AT_20 = 1.7241e-8;

	/** Temperature coefficient of that copper at 20 °C, per kelvin (IEC 60028). */
	static final double TEMPERATURE_COEFFICIENT = 0.00393;

	private static final double REFERENCE_CELSIUS = 20;

	private CopperConductor() {
	}

	/** The resistance of one conductor at 20 °C. */
	public static ResistancePerLength resistance(ConductorSize size) {
		return resistance(size, REFERENCE_CELSIUS);
	}

	/**
	 * The resistance of one conductor at a temperature: R = ρ/A · (1 + α·(T − 20 °C)).
	 *
	 * @param celsius the temperature of the conductor in degrees Celsius
	 */
	public static ResistancePerLength resistance(ConductorSize size, double celsius) {
		double squareMetres = squareMillimetres(size) * 1e-6;
		return new ResistancePerLength(RESISTIVITY_AT_20 / squareMetres * temperatureFactor(new Temperature(celsius)));
	}

	/** The resistance of one conductor at 20 °C: what its catalog declares, or what follows from its size. */
	public static ResistancePerLength resistance(Cable.Conductor conductor) {
		return conductor.declaredResistance().orElseGet(() -> resistance(conductor.size()));
	}

	/** By how much a temperature multiplies the resistance at 20 °C: 1 + α·(T − 20 °C). */
	public static double temperatureFactor(Temperature temperature) {
		return 1 + TEMPERATURE_COEFFICIENT * (temperature.celsius() - REFERENCE_CELSIUS);
	}

	/** The cross-section of a conductor in mm². */
	public static double squareMillimetres(ConductorSize size) {
		if (size instanceof CrossSection area) {
			return area.squareMillimetres();
		}
		double diameter = diameterMillimetres((AmericanWireGauge) size);
		return Math.PI / 4 * diameter * diameter;
	}

	/** The diameter of a gauge in mm: d = 0.127 mm · 92^((36 − n)/39) (ASTM B258, formula from memory). */
	static double diameterMillimetres(AmericanWireGauge gauge) {
		return 0.127 * Math.pow(92, (36 - gauge.number()) / 39.0);
	}
}
