/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.conductor.CopperConductor;
import hullwright.analysis.fault.ConductorLimit;
import hullwright.analysis.fault.FuseOpening;
import hullwright.analysis.fault.ShortCircuit;
import hullwright.analysis.fault.ShortCircuits;
import hullwright.analysis.power.Conditions;
import hullwright.analysis.power.FaultCircuit;
import hullwright.quantity.AmericanWireGauge;
import hullwright.quantity.CrossSection;
import hullwright.quantity.Current;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Short circuits on small boats: the current is the open voltage over the resistance of the loop, all by hand, and the fuses
 * open as their catalog says (2 times rated within 10 s, 8 times within 100 ms).
 */
class ShortCircuitTest {

	private static final double EXACT = 1e-9;

	/** Of the fuse's curve between its two points, on logarithmic axes. */
	private static final double SLOPE = Math.log(0.1 / 10) / Math.log(8.0 / 2);

	private static final Conditions NOMINAL = Conditions.nominal(Optional.empty());

	/** A device at the end of some metres with 0.1 ohm each way for each of them. */
	private static final String END_FED = """
			%s
			network net of kind instrument bus {
				backbone of tenth { tap start : %s cable %s tee t1 : tee1 }
				drop t1.1 to a : amp
			}
			""";

	private static final String FED_TWICE = """
			supply left { 12 V; fuse 3 A of glass }
			supply right { 12 V; fuse 3 A of glass }
			network net of kind instrument bus {
				backbone of tenth { tap start : inlet from left cable 1.75 m tee t1 : tee1 cable 9.75 m tap end : inlet from right }
				drop t1.1 to a : amp
			}
			""";

	private static ShortCircuit at(String device, String series, Conditions conditions) {
		ComputedBoat boat = ComputedBoat.with(series);
		return ShortCircuits.of(boat.boat(), boat.wiring(), boat.circuit(conditions.state()), conditions).stream()
				.filter(each -> each.at().equals("trial." + device)).findFirst().orElseThrow();
	}

	private static ShortCircuit endFed(String supplies, String tap, String cable) {
		return at("net.a", END_FED.formatted(supplies, tap, cable), NOMINAL);
	}

	private static List<String> opened(ShortCircuit fault) {
		return fault.openings().stream().map(FuseOpening::owner).toList();
	}

	@Test
	void theCurrentIsTheOpenVoltageOverTheLoop() {
		double loop = 0.020 + 0.150 / 10 + 2 * 3 * CopperConductor.resistance(new CrossSection(2.5)).ohmsPerMetre() + 2 * 0.4;
		String supplies = """
				bank service { 12 V, lowest 11 V; internal resistance 20 mohm }
				supply house { from service; fuse 10 A of glass; lead 3 m each way of 2.5 mm2 }
				""";
		String boat = END_FED.formatted(supplies, "inlet from house", "4 m");

		assertEquals(12 / loop, at("net.a", boat, NOMINAL).current().amperes(), EXACT);
		double hot = 0.035 + (loop - 0.035) * (1 + 0.00393 * 40);
		assertEquals(11 / hot, at("net.a", boat, Conditions.lowest(Optional.empty())).current().amperes(), EXACT, "hot copper, lowest bank");
	}

	/** 12 V over 1.2 ohm, 10 A through a fuse of 3 A: 10/3 of its rating, on the straight line between both points on logarithmic axes. */
	@Test
	void theFuseOpensAsItsCurveSays() {
		ShortCircuit fault = endFed("supply house { 12 V; fuse 3 A of glass }", "inlet from house", "5.75 m");

		assertEquals(12 / (0.05 + 1.15), fault.current().amperes(), EXACT);
		assertEquals(List.of("trial.house"), opened(fault));
		assertEquals(10 * Math.pow(10.0 / 3 / 2, SLOPE), fault.ended().orElseThrow().seconds(), 1e-9);
		assertEquals(ShortCircuit.Verdict.ENDED_IN_TIME, fault.verdict());
	}

	/** It gives its 8 A, where 12 V over 0.8 ohm would drive 15 A. */
	@Test
	void aConverterGivesNoMoreThanItCan() {
		ShortCircuit fault = endFed("bank service { 24 V } converter toTwelve { from service; 12 V; isolated; at most 8 A } supply house { from toTwelve }",
				"inlet from house", "4 m");

		assertEquals(8, fault.current().amperes(), EXACT);
		assertEquals(Optional.of("trial.toTwelve"), fault.limitedBy());
	}

	/** Beside a bank: the converter gives its 4 A at whatever voltage that takes, and the bank drives what it drives. */
	@Test
	void aConverterThatGivesNoMoreDoesNotHoldTheBankBesideItBack() {
		ShortCircuit fault = at("net.a", """
				bank service { 24 V }
				converter toTwelve { from service; 12 V; at most 4 A }
				supply left { from toTwelve; fuse 3 A of glass }
				supply right { 12 V; fuse 10 A of glass }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from left cable 2 m tee t1 : tee1 cable 4 m tap end : inlet from right }
					drop t1.1 to a : amp
				}
				""", NOMINAL);
		// the return lies side by side to both minus, which are one; the bank's loop: 12 V = (0.015 + 0.4) · I + back · (4 A + I)
		double back = parallel(0.2, 0.4);
		double bank = (12 - 4 * back) / (0.415 + back);

		assertEquals(4 + bank, fault.current().amperes(), EXACT);
		assertEquals(Optional.of("trial.toTwelve"), fault.limitedBy());
		assertEquals(List.of("trial.right"), opened(fault).subList(0, 1), "2.1 times its rating, where 4 A are 1.3 times that of the left one");
	}

	/** Two that would each give some 20 A into the place between them. */
	@Test
	void twoConvertersGiveWhatBothCan() {
		ShortCircuit fault = at("net.a", """
				bank service { 24 V }
				converter first { from service; 12 V; at most 4 A }
				converter second { from service; 12 V; at most 6 A }
				supply left { from first }
				supply right { from second }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from left cable 2 m tee t1 : tee1 cable 4 m tap end : inlet from right }
					drop t1.1 to a : amp
				}
				""", NOMINAL);

		assertEquals(10, fault.current().amperes(), 1e-6);
	}

	/** 5 A at the breaker and 3 A at the tap carry the same current; the smaller is quicker, and that ends it. */
	@Test
	void ofTwoFusesInARowTheQuickerOpens() {
		ShortCircuit fault = endFed("supply house { 12 V; fuse 5 A of glass }", "fused from house", "4 m");

		assertEquals(List.of("trial.net.start"), opened(fault));
		assertEquals(12 / (0.03 + 0.05 + 0.8), fault.current().amperes(), EXACT);
	}

	/** 0.05 ohm each for the fuses; supply conductors of 0.175 and 0.975 ohm side by side, and the same for the returns. */
	@Test
	void aPlaceThatIsFedTwiceIsDeadWhenBothFusesHaveOpened() {
		ShortCircuit fault = at("net.a", FED_TWICE, NOMINAL);
		double supply = parallel(0.05 + 0.175, 0.05 + 0.975);
		double back = parallel(0.175, 0.975);
		double right = 12 / (0.05 + 0.975 + back);

		assertEquals(12 / (supply + back), fault.current().amperes(), EXACT);
		assertEquals(List.of("trial.left", "trial.right"), opened(fault));
		assertEquals(12 / (supply + back) * supply / 0.225, fault.openings().get(0).current().amperes(), EXACT, "the left one's part");
		assertEquals(right, fault.openings().get(1).current().amperes(), EXACT, "what the right one carries when the left one has opened");
		double first = 0.1 * Math.pow(24 / fault.openings().get(0).current().amperes(), 2);
		double second = 10 * Math.pow(right / 6, SLOPE);
		assertEquals(first + second, fault.ended().orElseThrow().seconds(), 1e-6, "at most the one after the other");
	}

	/** The left cable carries 30 A for a moment only, and 10 A over the right one are ended before that is harmed. */
	@Test
	void aCableIsMeasuredByWhatItCarriesUntilItsFuseOpens() {
		ShortCircuit fault = at("net.a", FED_TWICE, NOMINAL);

		assertEquals(ShortCircuit.Verdict.ENDED_IN_TIME, fault.verdict());
		assertEquals(Optional.of("trial.net.t1-to-end"), fault.conductor());
		double alone = ConductorLimit.stands(new AmericanWireGauge(22), Optional.of(new Current(3)), fault.openings().get(1).current()).orElseThrow().seconds();
		double stands = fault.stands().orElseThrow().seconds();
		assertTrue(stands > 0.9 * alone && stands < alone + 0.1, "what it carried before is little: " + stands + " s, and alone " + alone + " s");
	}

	/** What still flows when the one fuse has opened is 2 A, for which the cable is made. */
	@Test
	void whatIsLeftWhenAFuseHasOpenedMayBeHarmless() {
		ShortCircuit fault = at("net.a", FED_TWICE.replace("supply right { 12 V; fuse 3 A of glass }",
				"bank b { 24 V } converter c { from b; 12 V; at most 2 A } supply right { from c }"), NOMINAL);

		assertEquals(List.of("trial.left"), opened(fault));
		assertEquals(ShortCircuit.Verdict.HARMLESS, fault.verdict());
	}

	private static double parallel(double one, double other) {
		return one * other / (one + other);
	}

	/** The second negative of a thruster is a way back for the fault as well. */
	@Test
	void aSecondNegativeCarriesItsPartOfTheFault() {
		double own = 6 * CopperConductor.resistance(new CrossSection(70)).ohmsPerMetre();
		ShortCircuit fault = at("net.far", """
				bank service { 12 V }
				supply house { from service }
				supply strong { from service }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from house cable 4 m tee t1 : tee1 cable 5 m tee t2 : tee1 }
					drop t1.1 via 2 m to bow : thruster { from strong lead 6 m each way of 70 mm2 }
					drop t2.1 to far : idle
				}
				""", NOMINAL);

		double back = 0.5 + parallel(0.4, 0.2 + own);
		assertEquals(12 / (0.9 + back), fault.current().amperes(), EXACT);
	}

	/** One boat for each verdict. The cable is 22 AWG for 3 A: it stands 15 A for some 6 s, 21 A for some 3 s. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', value = {
			"supply house { 12 V; fuse 3 A of glass } | inlet from house | 4 m | ENDED_IN_TIME",
			"supply house { 12 V; fuse 10 A of glass } | inlet from house | 2.8 m | ENDED_TOO_LATE",
			"bank b { 24 V } converter c { from b; 12 V; isolated; at most 2 A } supply house { from c } | inlet from house | 4 m | HARMLESS",
			"supply house { 12 V; fuse 10 A of glass } | inlet from house | 4 m | NOT_ENDED",
			"supply house { 12 V } | inlet | 4 m | NO_CURRENT",
			"supply house { 12 V } | inlet from house | 0 m | WITHOUT_LIMIT" })
	void everyVerdictIsReached(String supplies, String tap, String cable, ShortCircuit.Verdict verdict) {
		ShortCircuit fault = endFed(supplies, tap, cable);

		assertEquals(verdict, fault.verdict());
		boolean ends = verdict == ShortCircuit.Verdict.ENDED_IN_TIME || verdict == ShortCircuit.Verdict.ENDED_TOO_LATE;
		assertEquals(ends, fault.ended().isPresent());
		boolean harms = ends || verdict == ShortCircuit.Verdict.NOT_ENDED;
		assertEquals(harms ? Optional.of("trial.net.start-to-t1") : Optional.empty(), fault.conductor());
	}

	/** 12 V over 20 mohm of the bank drive 600 A through contacts for 4 A; no cable is there to be harmed. */
	@Test
	void whatContactsAreNotMadeForIsNotHarmless() {
		ShortCircuit fault = endFed("bank b { 12 V; internal resistance 20 mohm } supply house { from b }", "inlet from house", "0 m");

		assertEquals(600, fault.current().amperes(), EXACT);
		assertEquals(ShortCircuit.Verdict.NOT_ENDED, fault.verdict());
		assertEquals(Optional.empty(), fault.conductor());
	}

	/** Switched off, nothing flows. */
	@Test
	void aSupplyThatIsOffDrivesNothing() {
		String boat = END_FED.formatted("switch main supply house { 12 V; switch main } state keyOff { } state running { on main }",
				"inlet from house", "4 m");
		ComputedBoat computed = ComputedBoat.with(boat);
		Conditions off = Conditions.lowest(Optional.of(computed.state("keyOff")));

		assertEquals(ShortCircuit.Verdict.NO_CURRENT, at("net.a", boat, off).verdict());
		assertTrue(at("net.a", boat, Conditions.lowest(Optional.of(computed.state("running")))).current().amperes() > 10);
	}

	/**
	 * Networks on one bank are looked at without those that no current can pass through. The whole circuit at once says the same: with
	 * one of them fed twice.
	 */
	@Test
	void networksOnOneBankAreWhatTheWholeCircuitSays() {
		ComputedBoat boat = ComputedBoat.with("""
				bank service { 12 V; internal resistance 20 mohm }
				supply main { from service; fuse 30 A of glass; lead 3 m each way of 2.5 mm2 }
				supply left { from main; fuse 3 A of glass; lead 1 m each way of 1.5 mm2 }
				supply right { from main; fuse 3 A of glass; lead 2 m each way of 1.5 mm2 }
				supply other { from service; fuse 3 A of glass; lead 4 m each way of 1.5 mm2 }
				network bow of kind instrument bus {
					backbone of tenth { tap start : inlet from left cable 3 m tee t1 : tee1 }
					drop t1.1 to a : amp
				}
				network mid of kind instrument bus {
					backbone of tenth { tap start : inlet from left cable 2 m tee t1 : tee1 cable 5 m tap end : inlet from right }
					drop t1.1 to b : amp
				}
				network aft of kind instrument bus {
					backbone of tenth { tap start : inlet from other cable 4 m tee t1 : tee1 }
					drop t1.1 to c : amp
				}
				network fly of kind instrument bus {
					backbone of tenth { tap start : inlet from right cable 1 m tee t1 : tee1 }
					drop t1.1 to d : amp
				}
				""");
		FaultCircuit whole = boat.circuit(NOMINAL.state()).faults(NOMINAL, Set.of());
		Map<String, ShortCircuit> alone = ShortCircuits.of(boat.boat(), boat.wiring(), boat.circuit(NOMINAL.state()), NOMINAL).stream()
				.collect(Collectors.toMap(ShortCircuit::at, each -> each));

		assertEquals(4 + 2 * 4, alone.size(), "the device of each, and both ends of its backbone");
		boat.wiring().devices().forEach(device -> assertEquals(whole.at(device.point()).current().orElseThrow().amperes(),
				alone.get(device.device().name()).current().amperes(), EXACT, device.device().name()));
		assertEquals(List.of("trial.other"), opened(alone.get("trial.aft.c")));
		assertEquals(Set.of("trial.left", "trial.right"), Set.copyOf(opened(alone.get("trial.bow.a"))), "the network that is fed twice goes on feeding it");
	}
}
