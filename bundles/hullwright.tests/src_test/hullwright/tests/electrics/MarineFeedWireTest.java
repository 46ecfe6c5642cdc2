/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.conductor.CopperConductor;
import hullwright.analysis.conductor.MarineFeedWire;
import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.power.LeadSizing;
import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.CrossSection;
import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Voltage;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The feed-wire formula of the marine trade against its published example (a chandlery catalogue of 2021, pp. 52-53): a bilge
 * pump of 10 A, 11 ft there and 10 ft back, takes 16 AWG at 10 % of 12 V and 10 AWG at 3 %, in the row of 25 ft.
 */
class MarineFeedWireTest {

	private static final double THREE_PERCENT = 0.36;
	private static final double TEN_PERCENT = 1.2;

	private static CrossSection needed(double amperes, double feet, double volts) {
		return MarineFeedWire.needed(new Current(amperes), new Length(feet * 0.3048), new Voltage(volts));
	}

	private static int gauge(double amperes, double feet, double volts) {
		return MarineFeedWire.thinnest(needed(amperes, feet, volts)).orElseThrow().number();
	}

	@Test
	void theBilgePumpOfThePublishedExample() {
		assertEquals(16, gauge(10, 21, TEN_PERCENT), "by the formula");
		assertEquals(16, gauge(10, 25, TEN_PERCENT), "in the row of 25 ft");
		assertEquals(10, gauge(10, 21, THREE_PERCENT), "by the formula");
		assertEquals(10, gauge(10, 25, THREE_PERCENT), "in the row of 25 ft");
	}

	/** 10.75 · 10 · 21 / 1.2 = 1881 circular mils, / 0.36 = 6271; one circular mil is π/4 · (25.4 µm)². */
	@Test
	void theAreaInCircularMils() {
		double circularMil = Math.PI / 4 * Math.pow(0.0254, 2);
		assertEquals(1881.25, needed(10, 21, TEN_PERCENT).squareMillimetres() / circularMil, 1e-6);
		assertEquals(6270.83, needed(10, 21, THREE_PERCENT).squareMillimetres() / circularMil, 0.01);
	}

	/** Marine wire is thinner than its gauge number says. By ASTM B258, 12 AWG (6530 circular mils) would do at 3 %, and the example says 10. */
	@Test
	void theExampleHoldsForTheAreasOfMarineWireOnly() {
		CrossSection needed = needed(10, 21, THREE_PERCENT);
		assertTrue(CopperConductor.squareMillimetres(new AmericanWireGauge(12)) > needed.squareMillimetres());
		assertTrue(MarineFeedWire.area(new AmericanWireGauge(12)).squareMillimetres() < needed.squareMillimetres());
	}

	/** Derived from the formula and the areas of marine wire; only the example above is published in a copy that we could read. */
	@ParameterizedTest
	@CsvSource({
			"10, 18, 14, 12, 10, 18, 18, 18, 16",
			"15, 16, 12, 10, 10, 18, 18, 16, 14",
			"20, 14, 10, 10, 8, 18, 16, 14, 14",
			"25, 12, 10, 8, 6, 18, 16, 14, 12",
			"30, 12, 10, 8, 6, 18, 14, 12, 12",
			"40, 10, 8, 6, 6, 16, 14, 12, 10",
			"50, 10, 6, 6, 4, 16, 12, 10, 10",
			"60, 10, 6, 4, 4, 14, 12, 10, 8",
			"80, 8, 6, 4, 2, 14, 10, 8, 8",
			"100, 6, 4, 2, 2, 12, 10, 8, 6" })
	void aRowOfTheDerivedTable(int feet, int five, int ten, int fifteen, int twenty, int fiveLax, int tenLax, int fifteenLax, int twentyLax) {
		assertEquals(List.of(five, ten, fifteen, twenty, fiveLax, tenLax, fifteenLax, twentyLax),
				List.of(gauge(5, feet, THREE_PERCENT), gauge(10, feet, THREE_PERCENT), gauge(15, feet, THREE_PERCENT), gauge(20, feet, THREE_PERCENT),
						gauge(5, feet, TEN_PERCENT), gauge(10, feet, TEN_PERCENT), gauge(15, feet, TEN_PERCENT), gauge(20, feet, TEN_PERCENT)));
	}

	@Test
	void noMarineWireIsThickEnoughForAWindlass() {
		assertEquals(Optional.empty(), MarineFeedWire.thinnest(needed(100, 80, THREE_PERCENT)));
	}

	@Test
	void noDropAtAllCannotBeAskedFor() {
		assertThrows(IllegalArgumentException.class, () -> needed(10, 21, 0));
	}

	/** The example as a boat: the wire is 10.5 ft each way. The supply without a fuse is sized for the 1 A that it gives. */
	@Test
	void theLeadsOfABoatStandBesideWhatTheFormulaAsks() {
		BoatElectrics electrics = BoatElectrics.of(ComputedBoat.with("""
				bank service { 12 V, lowest 11 V }
				supply house { from service; fuse 10 A of glass; lead 10.5 ft each way of 12 AWG }
				supply other { from service; lead 10.5 ft each way of 1.5 mm2 }
				supply strong { from service; lead 1 m each way of 10 AWG }
				network net of kind instrument bus {
					backbone of tenth { tap left : inlet from house tee t1 : tee1 isolator divide : gap tee t2 : tee1 tap right : inlet from other }
					drop t1.1 to a : idle
					drop t2.1 to b : amp
				}
				device bow : thruster { from strong lead 3 m each way of 70 mm2 }
				""").boat());

		assertEquals(List.of("trial.house", "trial.other", "trial.bow"), electrics.leadSizings().stream().map(LeadSizing::of).toList());
		LeadSizing house = electrics.leadSizings().get(0);
		assertEquals(LeadSizing.Basis.FUSE, house.basis());
		assertEquals(Optional.of(new AmericanWireGauge(10)), house.critical().gauge());
		assertFalse(house.critical().fulfilled(), "12 AWG is too thin at 3 %");
		assertEquals(Optional.of(new AmericanWireGauge(16)), house.other().gauge());
		assertTrue(house.other().fulfilled());
		LeadSizing other = electrics.leadSizings().get(1);
		assertEquals(LeadSizing.Basis.DRAWN, other.basis());
		assertEquals(1, other.current().amperes(), 1e-9);
		assertTrue(other.critical().fulfilled());
		LeadSizing bow = electrics.leadSizings().get(2);
		assertEquals(LeadSizing.Basis.OWN_DRAW, bow.basis());
		assertEquals(300, bow.current().amperes());
		assertEquals(Optional.empty(), bow.critical().gauge());
	}
}
