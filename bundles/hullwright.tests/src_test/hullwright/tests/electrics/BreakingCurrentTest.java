/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.power.BreakingCurrent;
import hullwright.analysis.power.Conditions;
import hullwright.quantity.Current;

/**
 * What fuses are asked to break: a short circuit right behind them, at the highest bank and with cold wires. By hand: the open
 * voltage over all that is in the way.
 */
class BreakingCurrentTest {

	private static final String PANEL = """
			catalog Panel "Invented" {
				fuse weak { rated 10 A; drops 150 mV; interrupts 300 A }
				fuse strong { rated 10 A; drops 150 mV; interrupts 1000 A }
				fuse silent { rated 10 A }
			}
			""";

	private static List<BreakingCurrent> breaking(String plant) {
		return BoatElectrics.of(ComputedBoat.of(PANEL + "series trial {\n" + plant + "\n}").boat()).states().get(0).breaking();
	}

	/** 14.4 V over 20 mohm of the bank and 15 mohm of the fuse itself: 411 A. */
	@Test
	void aBankDrivesWhatItsResistanceLets() {
		BreakingCurrent weak = breaking("""
				bank service { 12 V, lowest 11 V, highest 14.4 V; internal resistance 20 mohm }
				supply house { from service; fuse 10 A of weak }
				""").get(0);

		assertEquals("trial.house", weak.owner());
		assertEquals(14.4 / 0.035, weak.asked().orElseThrow().amperes(), 1e-9);
		assertEquals(Optional.of(new Current(300)), weak.able());
		assertTrue(weak.isExceeded());
	}

	@Test
	void aBreakerThatCanIsNotExceeded() {
		assertFalse(breaking("""
				bank service { 12 V, lowest 11 V, highest 14.4 V; internal resistance 20 mohm }
				supply house { from service; fuse 10 A of strong }
				""").get(0).isExceeded());
	}

	/** Nothing is claimed of a current that nothing limits, nor of a fuse whose catalog is silent. */
	@Test
	void whatNobodyStatesIsNotClaimed() {
		BreakingCurrent unlimited = breaking("bank service { 12 V } supply house { from service; fuse 10 A of silent }").get(0);

		assertEquals(Optional.empty(), unlimited.asked());
		assertFalse(unlimited.isExceeded());
		BreakingCurrent silent = breaking("bank service { 12 V; internal resistance 20 mohm } supply house { from service; fuse 10 A of silent }").get(0);
		assertEquals(12 / 0.020, silent.asked().orElseThrow().amperes(), 1e-9);
		assertFalse(silent.isExceeded());
	}

	/**
	 * A tap with a fuse of 50 mohm on each side, fed over 50 mohm; another supply 0.2 ohm of backbone away, the negatives joined. The fuse towards that one
	 * is asked most from its own side. That on the other side breaks what both supplies drive through it.
	 */
	@Test
	void aFuseIsAskedFromItsStrongerSide() {
		ComputedBoat boat = ComputedBoat.with("""
				bank service { 12 V; internal resistance 50 mohm }
				supply left { from service }
				supply right { 12 V }
				network net of kind instrument bus {
					backbone of tenth { tap start : fused from left cable 2 m tap end : inlet from right }
				}
				""");
		List<Double> asked = boat.circuit(Optional.empty()).faults(Conditions.nominal(Optional.empty()), Set.of()).breakingCurrents().stream()
				.map(each -> each.asked().orElseThrow().amperes()).sorted().toList();
		double inside = (12 / 0.05 + 12 / 0.25) / (1 / 0.05 + 1 / 0.05 + 1 / 0.25);

		assertEquals(2, asked.size());
		assertEquals(12 / (0.05 + 0.05), asked.get(0), 1e-9);
		assertEquals(inside / 0.05, asked.get(1), 1e-9);
	}
}
