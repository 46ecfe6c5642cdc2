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
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The worked examples of the DeviceNet media handbook DNET-UM072C-EN-P: the full calculation (p. 4-22, equation p. 4-21) and
 * the supply in the middle (p. 4-14). The equation sums, for each device, the drop of one conductor: that is the shift of the
 * return at the last device.
 */
class PublishedFullCalculationTest {

	/** 0.0045 ohm/ft for thick cable and 0.005 ohm for each tap: two contacts of 0.0025 ohm at each tee. The drops count nothing. */
	private static final String CATALOG = String.format(Locale.ROOT, """
			catalog Handbook "Invented, but for its resistances" {
				family trunkContact { standard; contact 2.5 mohm }
				family dropContact { standard; contact 0 mohm }
				cable thickFoot { power 15 AWG, %.9f mohm/m each way }
				cable thickMetre { power 15 AWG, 15 mohm/m each way }
				tap entry { backbone trunkContact male, trunkContact female; feeds both sides }
				tee port { backbone trunkContact male, trunkContact female; port 1 : dropContact female }
				device a25 { port bus : dropContact male; load 0.25 A constant current }
				device a50 { port bus : dropContact male; load 0.5 A constant current }
				device a100 { port bus : dropContact male; load 1 A constant current }
				device a110 { port bus : dropContact male; load 1.1 A constant current }
				device a125 { port bus : dropContact male; load 1.25 A constant current }
			}
			""", 4.5 / 0.3048);

	/** 50 ft 1.00 A, 100 ft 0.50 A, 400 ft 0.50 A, 800 ft 0.25 A; with an option each, and a device without load at the end. */
	private static final String FOUR_DEVICES = CATALOG + """
			series trial {
				options { first; second; third; fourth }
				supply rail { 24 V }
				network trunk of kind instrument bus {
					backbone of thickFoot {
						tap start : entry from rail
						cable 50 ft
						tee t1 : port
						cable 50 ft
						tee t2 : port
						cable 300 ft
						tee t3 : port
						cable 400 ft
						tee t4 : port
					}
					drop t1.1 to d1 : a100 when first
					drop t2.1 to d2 : a50 when second
					drop t3.1 to d3 : a50 when third
					drop t4.1 to d4 : a25 when fourth
				}
			}
			""";

	/** What the handbook prints for each device, rounded. */
	private static final List<Double> PRINTED = List.of(0.23, 0.23, 0.91, 0.91);

	private static final List<String> OPTIONS = List.of("first", "second", "third", "fourth");

	@Test
	void theSumIsThatOfTheExample() {
		PowerFlow flow = ComputedBoat.of(FOUR_DEVICES, OPTIONS.toArray(String[]::new)).nominal();

		assertEquals(2.2725, shift(flow, "trunk.d4"), 1e-6, "without the rounding of the four terms");
		assertEquals(24 - 2 * 2.2725, ComputedBoat.volts(flow, "trunk.d4"), 1e-6, "both conductors drop");
	}

	/** The handbook rounds each term: 0.23 + 0.23 + 0.91 + 0.91 = 2.28 V. */
	@Test
	void eachTermIsWhatItsDeviceDropsAlone() {
		double sum = 0;
		for (int i = 0; i < PRINTED.size(); i++) {
			PowerFlow alone = ComputedBoat.of(FOUR_DEVICES, OPTIONS.get(i)).nominal();
			double term = shift(alone, "trunk.d" + (i + 1));
			assertEquals(PRINTED.get(i), term, 0.005 + 1e-9);
			sum += Math.round(term * 100 + 1e-6) / 100.0;
		}
		assertEquals(2.28, sum, 1e-9);
	}

	/**
	 * 1.10 A, 1.25 A and 0.50 A at 86, 55 and 1 m to one side, 0.25 A each at 85, 127 and 158 m to the other. Our notes do not
	 * say which of the three devices stands where, so all orders are tried. 4.65 V of one conductor are permitted.
	 */
	@Test
	void bothSidesOfASupplyInTheMiddleHoldInAnyOrder() {
		List<String> devices = List.of("a110", "a125", "a50");
		for (int order = 0; order < 6; order++) {
			String near = devices.get(order / 2);
			String middle = devices.get((order / 2 + 1 + order % 2) % 3);
			String far = devices.get((order / 2 + 2 - order % 2) % 3);
			PowerFlow flow = middle(near, middle, far, "a25");

			assertEquals(3.6, flow.entries().get(0).current().amperes(), 1e-9, "below the 4 A of the example's class 2 wiring");
			for (String device : List.of("l1", "l2", "l3", "r1", "r2", "r3")) {
				assertTrue(shift(flow, "trunk." + device) < 4.65, device + " of " + near + ", " + middle + ", " + far);
			}
		}
	}

	/** Twelve terms of the equation by hand, in metres: 0.015 ohm/m, 0.005 ohm a tap. */
	@Test
	void theSideOfASupplyInTheMiddleDropsWhatTheEquationSays() {
		PowerFlow flow = middle("a50", "a125", "a110", "a25");

		assertEquals((1 * 0.015 + 0.005) * 0.5 + (55 * 0.015 + 0.010) * 1.25 + (86 * 0.015 + 0.015) * 1.1, shift(flow, "trunk.l3"), 1e-9);
		assertEquals(0.25 * ((85 + 127 + 158) * 0.015 + 0.030), shift(flow, "trunk.r3"), 1e-9);
	}

	@Test
	void eachSideOfASupplyInTheMiddleIsIndependentOfTheOther() {
		PowerFlow light = middle("a50", "a125", "a110", "a25");
		PowerFlow heavy = middle("a50", "a125", "a110", "a125");

		IntStream.rangeClosed(1, 3).forEach(i -> assertEquals(shift(light, "trunk.l" + i), shift(heavy, "trunk.l" + i), 1e-12));
		assertEquals(5 * shift(light, "trunk.r3"), shift(heavy, "trunk.r3"), 1e-9);
	}

	private static PowerFlow middle(String near, String middle, String far, String right) {
		return ComputedBoat.of(CATALOG + """
				series trial {
					supply rail { 24 V }
					network trunk of kind instrument bus {
						backbone of thickMetre {
							tee t86 : port
							cable 31 m
							tee t55 : port
							cable 54 m
							tee t1 : port
							cable 1 m
							tap start : entry from rail
							cable 85 m
							tee t85 : port
							cable 42 m
							tee t127 : port
							cable 31 m
							tee t158 : port
						}
						drop t1.1 to l1 : %s
						drop t55.1 to l2 : %s
						drop t86.1 to l3 : %s
						drop t85.1 to r1 : %s
						drop t127.1 to r2 : %4$s
						drop t158.1 to r3 : %4$s
					}
				}
				""".formatted(near, middle, far, right)).nominal();
	}
}
