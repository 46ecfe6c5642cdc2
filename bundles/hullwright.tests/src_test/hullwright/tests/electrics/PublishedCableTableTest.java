/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static hullwright.tests.electrics.ComputedBoat.shift;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.power.PowerFlow;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The published table of current against length for a thick cable that is fed at one end (a DeviceNet installation and
 * maintenance manual of 2000, p. 12, table 4; 100 m and 160 m also in the DeviceNet media handbook DNET-UM072C-EN-P, p. 4-14).
 *
 * <p>The sources do not print the model behind it. Ours: all load at the far end, and one conductor may drop 4.65 V (handbook
 * p. 4-21) over a fixed resistance R0, that of contacts, and r for each metre. R0 and r are found on every second point of the
 * table; the circuit of a boat with these two must then tell the points in between.
 */
class PublishedCableTableTest {

	/** Of one conductor. */
	private static final double PERMITTED_DROP = 4.65;

	/** The table is printed to hundredths of an ampere. */
	private static final double ROUNDING = 0.005;

	/** Amperes by metres. */
	private static final TreeMap<Integer, Double> PUBLISHED = new TreeMap<>();

	static {
		PUBLISHED.put(50, 5.42);
		PUBLISHED.put(100, 2.93);
		PUBLISHED.put(150, 2.01);
		PUBLISHED.put(160, 1.89);
		PUBLISHED.put(200, 1.53);
		PUBLISHED.put(250, 1.23);
		PUBLISHED.put(300, 1.03);
		PUBLISHED.put(350, 0.89);
		PUBLISHED.put(400, 0.78);
		PUBLISHED.put(450, 0.69);
		PUBLISHED.put(500, 0.63);
	}

	private static final double[] CALIBRATED = fitted(List.of(50, 150, 250, 350, 450));

	@ParameterizedTest
	@ValueSource(ints = { 100, 160, 200, 300, 400, 500 })
	void thePointsBetweenThoseOfTheCalibrationFollow(int metres) {
		double permitted = permitted(metres, CALIBRATED[0], CALIBRATED[1]);

		assertEquals(PUBLISHED.get(metres), permitted, ROUNDING);
		assertEquals(PERMITTED_DROP, shift(boat(metres, CALIBRATED[0], CALIBRATED[1], permitted), "trunk.end"), 1e-6);
	}

	/** 0.015 ohm/m is the value of the full calculation (handbook p. 4-21); without contacts it misses the table by far. */
	@Test
	void theNaiveModelWithoutContactsMissesTheTable() {
		double naive = permitted(100, 0, 0.015);

		assertEquals(3.10, naive, ROUNDING);
		assertTrue(Math.abs(naive - PUBLISHED.get(100)) > 30 * ROUNDING, "3.10 A is not 2.93 A");
	}

	/** The current at which the return conductor drops what it may: the drop of 1 A tells it, since currents are constant. */
	private static double permitted(int metres, double contacts, double ohmsPerMetre) {
		return PERMITTED_DROP / shift(boat(metres, contacts, ohmsPerMetre, 1), "trunk.end");
	}

	/** A supply, the cable, and a load at its end; R0 lies in the three pairs of contacts on the way. */
	private static PowerFlow boat(int metres, double contacts, double ohmsPerMetre, double amperes) {
		return ComputedBoat.of(String.format(Locale.ROOT, """
				catalog Calibrated "Invented, but for its resistances" {
					family seven { standard; contact %.9f mohm }
					cable thick { power 15 AWG, %.9f mohm/m each way }
					tap entry { backbone seven male, seven female; feeds both sides }
					tee port { backbone seven male, seven female; port 1 : seven female }
					device load { port bus : seven male; load %.12f A constant current }
				}
				series trial {
					supply rail { 24 V }
					network trunk of kind instrument bus {
						backbone of thick { tap start : entry from rail cable %d m tee far : port }
						drop far.1 to end : load
					}
				}
				""", contacts / 3 * 1000, ohmsPerMetre * 1000, amperes, metres)).nominal();
	}

	/** R0 and r by least squares on I = 4.65 V / (R0 + r · L), by the method of Gauss and Newton. */
	private static double[] fitted(List<Integer> lengths) {
		double contacts = 0.1;
		double perMetre = 0.015;
		for (int round = 0; round < 20; round++) {
			double aa = 0;
			double ab = 0;
			double bb = 0;
			double ar = 0;
			double br = 0;
			for (int metres : lengths) {
				double ohms = contacts + perMetre * metres;
				double a = -PERMITTED_DROP / (ohms * ohms);
				double b = a * metres;
				double residual = PUBLISHED.get(metres) - PERMITTED_DROP / ohms;
				aa += a * a;
				ab += a * b;
				bb += b * b;
				ar += a * residual;
				br += b * residual;
			}
			double determinant = aa * bb - ab * ab;
			contacts += (ar * bb - br * ab) / determinant;
			perMetre += (br * aa - ar * ab) / determinant;
		}
		return new double[] { contacts, perMetre };
	}
}
