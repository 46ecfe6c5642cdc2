/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.conductor;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.ConductorSize;
import hullwright.quantity.CrossSection;
import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Voltage;

/**
 * The formula by which the trade picks feed wires on small craft: CM = K · I · L / E, with CM the area in circular mils, I in
 * amperes, L the way from the source to the load and back in feet, E the permitted drop in volts, K = 10.75 ohm cmil/ft (ABYC
 * E-11, K from memory; the wording also in a chandlery catalogue of 2021, pp. 52-53). K is that of copper at about 29 °C.
 *
 * <p>The formula is about the drop only. What a wire may carry without becoming too warm is another limit.
 */
public final class MarineFeedWire {

	/** Of source voltage, for panel feeders, electronics, navigation lights, pumps and all that safety hangs on (ABYC E-11, ISO 10133). */
	public static final double CRITICAL = 0.03;

	/** Of source voltage, for what is not critical. */
	public static final double OTHER = 0.10;

	/** In ohm cmil/ft. */
	private static final double K = 10.75;

	private static final double METRES_PER_FOOT = 0.3048;

	/** The area of a circle of one thousandth of an inch. */
	private static final double SQUARE_MILLIMETRES_PER_CIRCULAR_MIL = Math.PI / 4 * 0.0254 * 0.0254;

	/**
	 * The least area of marine wire in circular mils, by gauge: that of SAE J1127 and J1128, as ABYC E-11 takes it (from memory).
	 * It is less than the area that the gauge number means by ASTM B258, so tables made of the one do not fit the other.
	 */
	private static final Map<Integer, Integer> SAE_CIRCULAR_MILS = thinnestFirst(Map.of(18, 1537, 16, 2336, 14, 3702, 12, 5833, 10, 9343,
			8, 14810, 6, 24538, 4, 37360, 2, 62450));

	private MarineFeedWire() {
	}

	/**
	 * The area that a feed needs.
	 *
	 * @param current what flows
	 * @param both the way to the load and back
	 * @param permitted the drop that is permitted over both wires
	 * @throws IllegalArgumentException if no drop is permitted
	 */
	public static CrossSection needed(Current current, Length both, Voltage permitted) {
		if (!(permitted.volts() > 0)) {
			throw new IllegalArgumentException("a wire that drops nothing cannot be made");
		}
		double circularMils = K * current.amperes() * both.metres() / METRES_PER_FOOT / permitted.volts();
		return new CrossSection(circularMils * SQUARE_MILLIMETRES_PER_CIRCULAR_MIL);
	}

	/** The thinnest marine wire of 18 to 2 AWG that has an area; none if all are too thin. */
	public static Optional<AmericanWireGauge> thinnest(CrossSection needed) {
		return SAE_CIRCULAR_MILS.keySet().stream().map(AmericanWireGauge::new)
				.filter(gauge -> area(gauge).squareMillimetres() >= needed.squareMillimetres()).findFirst();
	}

	/** The area that a wire of a size has at least: by gauge that of marine wire, or by ASTM B258 if that is made in no such gauge. */
	public static CrossSection area(ConductorSize size) {
		if (size instanceof AmericanWireGauge gauge && SAE_CIRCULAR_MILS.containsKey(gauge.number())) {
			return new CrossSection(SAE_CIRCULAR_MILS.get(gauge.number()) * SQUARE_MILLIMETRES_PER_CIRCULAR_MIL);
		}
		return new CrossSection(CopperConductor.squareMillimetres(size));
	}

	private static Map<Integer, Integer> thinnestFirst(Map<Integer, Integer> circularMils) {
		Map<Integer, Integer> sorted = new TreeMap<>(Collections.reverseOrder());
		sorted.putAll(circularMils);
		return Collections.unmodifiableMap(sorted);
	}
}
