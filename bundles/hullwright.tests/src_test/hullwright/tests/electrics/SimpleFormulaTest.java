/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static hullwright.tests.electrics.ComputedBoat.drop;
import static hullwright.tests.electrics.ComputedBoat.volts;
import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.analysis.power.Conditions;
import hullwright.analysis.power.SimpleDrop;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * V = 0.1 · ΣLEN · L · R of the public NMEA 2000 cabling guides, beside the full calculation: where both must agree, and where
 * they must not. One of the guides says that the formula does not hold for networks with more than one supply.
 */
class SimpleFormulaTest {

	private static final String FED_AT_ONE_END = """
			options { spread; worn }
			supply house { 12 V }
			network net of kind instrument bus {
				backbone of tenth {
					tap start : inlet from house
					cable 5 m
					tee middle : tee1
					tee old : roughTee when worn
					cable 5 m
					tee far : tee4
				}
				drop middle.1 to first : amp when spread
				drop far.1 to end : amp
				drop far.2 to second : amp when not spread
			}
			""";

	/** 40 LEN over 10 m of 0.1 ohm/m are 4 V. */
	@Test
	void withAllLoadAtTheFarEndBothAgree() {
		ComputedBoat boat = ComputedBoat.with(FED_AT_ONE_END);
		SimpleDrop simple = towardsEnd(boat);

		assertEquals(2, simple.load().amperes(), 1e-12);
		assertEquals(10, simple.length().metres(), 1e-12);
		assertEquals(4, simple.drop().volts(), 1e-9);
		assertEquals(simple.drop().volts(), drop(boat.nominal(), "net.end"), 1e-9);
	}

	/** 2 A over 5 m and 1 A over 5 m more: 2 V + 1 V, where the formula says 4 V. */
	@Test
	void loadsAlongTheBackboneDropLess() {
		ComputedBoat boat = ComputedBoat.with(FED_AT_ONE_END, "spread");

		assertEquals(4, towardsEnd(boat).drop().volts(), 1e-9);
		assertEquals(3, drop(boat.nominal(), "net.end"), 1e-9);
	}

	/** Two contacts of 50 mohm in each conductor, which the formula leaves out, drop 0.4 V more at 2 A. */
	@Test
	void wornContactsDropMore() {
		ComputedBoat boat = ComputedBoat.with(FED_AT_ONE_END, "worn");

		assertEquals(4, towardsEnd(boat).drop().volts(), 1e-9);
		assertEquals(4.4, drop(boat.nominal(), "net.end"), 1e-9);
	}

	/** At 60 °C copper has 1 + 0.00393 · 40 of its resistance at 20 °C (IEC 60028). */
	@Test
	void hotWiresDropMore() {
		ComputedBoat boat = ComputedBoat.with(FED_AT_ONE_END);

		assertEquals(4 * (1 + 0.00393 * 40), drop(boat.at(Conditions.lowest(Optional.empty())), "net.end"), 1e-9);
	}

	/** 250 mA are 5 LEN, 251 mA are 6: ratings are rounded up, so the formula promises less than the circuit gives. */
	@Test
	void ratingsAreRoundedUpToWholeLen() {
		ComputedBoat boat = ComputedBoat.of("""
				catalog Odd "Invented" {
					family plain { standard; contact 0 mohm }
					cable tenth { power 22 AWG, 100 mohm/m each way }
					tap inlet { backbone plain male, plain female; feeds both sides }
					tee tee4 { backbone plain male, plain female; ports 1..4 : plain female }
					device round { port bus : plain male; load 250 mA constant current }
					device odd { port bus : plain male; load 251 mA constant current }
				}
				series trial {
					supply house { 12 V }
					network net of kind instrument bus {
						backbone of tenth { tap start : inlet from house cable 10 m tee far : tee4 }
						drop far.1 to a : round
						drop far.2 to b : odd
					}
				}
				""");

		assertEquals(11 * 0.05, towardsEnd(boat).load().amperes(), 1e-12);
		assertEquals(1.1, towardsEnd(boat).drop().volts(), 1e-9);
		assertEquals(2 * 0.501, drop(boat.nominal(), "net.a"), 1e-9);
	}

	/** Half of the current comes from each end: 1 V is lost where the formula, from either end, says 4 V. */
	@Test
	void withTwoSuppliesTheFormulaDoesNotHold() {
		ComputedBoat boat = ComputedBoat.with("""
				supply left { 12 V }
				supply right { 12 V }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from left cable 10 m tee middle : tee4 cable 10 m tap end : inlet from right }
					drop middle.1 to a : amp
				}
				""");

		assertEquals(List.of(0.0, 4.0, 4.0, 0.0), simple(boat).stream().map(each -> Math.round(each.drop().volts() * 1e9) / 1e9).toList());
		assertEquals(1, drop(boat.nominal(), "net.a"), 1e-9);
		assertEquals(11, volts(boat.nominal(), "net.a"), 1e-9);
	}

	/** Fed through a port of a tee in the middle: 20 LEN over 4 m to one side, 10 LEN over 10 m to the other; the device at that tee counts for neither. */
	@Test
	void aFeedThroughAPortHasTwoSidesAsWell() {
		ComputedBoat boat = ComputedBoat.with("""
				supply house { 12 V }
				network net of kind instrument bus {
					backbone of tenth { tee t1 : tee1 cable 4 m tee t2 : tee4 cable 10 m tee t3 : tee1 }
					feed entry : t2.4 via tail from house
					drop t1.1 to a : amp
					drop t2.1 to b : amp
					drop t3.1 to c : halfAmp
				}
				""");

		assertEquals(List.of(0.8, 1.0), simple(boat).stream().map(each -> Math.round(each.drop().volts() * 1e9) / 1e9).toList());
		assertEquals(12 - 2 * 0.1 * 2.5, boat.nominal().of("trial.net.b").orElseThrow().voltage().volts(), 1e-9, "behind 1 m of cord");
	}

	/** An isolator that breaks the supply makes two sections, each with a formula of its own. */
	@Test
	void theFormulaEndsAtAnIsolator() {
		ComputedBoat boat = ComputedBoat.with("""
				supply left { 12 V }
				supply right { 12 V }
				network net of kind instrument bus {
					backbone of tenth {
						tap start : inlet from left
						cable 4 m
						tee t1 : tee1
						isolator divide : gap
						tee t2 : tee1
						cable 10 m
						tap end : inlet from right
					}
					drop t1.1 to a : amp
					drop t2.1 to b : halfAmp
				}
				""");

		assertEquals(List.of(0.0, 0.8, 1.0, 0.0), simple(boat).stream().map(each -> Math.round(each.drop().volts() * 1e9) / 1e9).toList());
	}

	private static List<SimpleDrop> simple(ComputedBoat boat) {
		return SimpleDrop.of(boat.boat().networks().get(0));
	}

	private static SimpleDrop towardsEnd(ComputedBoat boat) {
		return simple(boat).stream().filter(SimpleDrop::towardsEnd).findFirst().orElseThrow();
	}
}
