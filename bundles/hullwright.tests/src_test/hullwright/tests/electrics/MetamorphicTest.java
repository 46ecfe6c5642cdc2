/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static hullwright.tests.electrics.ComputedBoat.drop;
import static hullwright.tests.electrics.ComputedBoat.shift;
import static hullwright.tests.electrics.ComputedBoat.volts;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.power.BankLevel;
import hullwright.analysis.power.Conditions;
import hullwright.analysis.power.LoadLevel;
import hullwright.analysis.power.PowerFlow;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What must follow when a boat is changed, whatever the figures are: the circuit against itself.
 */
class MetamorphicTest {

	private static final double EXACT = 1e-9;

	private static final List<String> ALL = List.of("net.a", "net.b", "net.c", "net.d");

	/** A network with loads of every kind on both sides of its tap, and worn contacts in the way. */
	private static final String MIXED = """
			bank service { 12 V; internal resistance 20 mohm }
			supply house { from service; fuse 5 A of glass; lead 3 m each way of 2.5 mm2 }
			network net of kind instrument bus {
				backbone of half {
					terminator l : endMale
					tee t1 : tee1
					cable 6 m
					tee t2 : roughTee
					cable 2 m
					tap mid : fused from house
					cable 8 m
					tee t3 : tee4
					terminator r : endFemale
				}
				drop t1.1 via 2 m of tenth to a : %s
				drop t2.1 to b : %s
				drop t3.1 via 3 m of tenth to c : %s
				drop t3.2 to d : %s
				%s
			}
			""";

	private static PowerFlow mixed(String a, String b, String c, String d, String more) {
		return ComputedBoat.with(MIXED.formatted(a, b, c, d, more)).nominal();
	}

	/** 0.5 A everywhere, then 1 A everywhere. */
	@Test
	void twiceTheCurrentsDropTwiceAsMuch() {
		PowerFlow once = mixed("halfAmp", "halfAmp", "halfAmp", "halfAmp", "");
		PowerFlow twice = mixed("amp", "amp", "amp", "amp", "");

		for (String device : ALL) {
			assertEquals(2 * (12 - volts(once, device)), 12 - volts(twice, device), EXACT, device);
			assertEquals(2 * shift(once, device), shift(twice, device), EXACT, device);
		}
	}

	@Test
	void constantCurrentsSuperpose() {
		PowerFlow left = mixed("amp", "halfAmp", "idle", "idle", "");
		PowerFlow right = mixed("idle", "idle", "halfAmp", "amp", "");
		PowerFlow together = mixed("amp", "halfAmp", "halfAmp", "amp", "");

		for (String device : ALL) {
			assertEquals(12 - volts(left, device) + 12 - volts(right, device), 12 - volts(together, device), EXACT, device);
		}
	}

	@Test
	void oneMoreLoadLowersEveryVoltage() {
		PowerFlow before = mixed("lamp", "radio", "amp", "radio", "");
		PowerFlow after = mixed("lamp", "radio", "amp", "radio", "drop t3.3 to e : lamp");

		for (String device : ALL) {
			assertTrue(volts(after, device) < volts(before, device), device);
		}
	}

	/** A device that draws nothing, and a drop to nothing, change nothing. */
	@Test
	void whatDrawsNothingChangesNothing() {
		PowerFlow before = mixed("lamp", "radio", "amp", "radio", "");
		PowerFlow after = mixed("lamp", "radio", "amp", "radio", "drop t3.3 to e : idle drop t3.4 via 5 m of tenth");

		ALL.forEach(device -> assertEquals(volts(before, device), volts(after, device), EXACT, device));
	}

	/** The same boat told from the other end: connectors are turned round as well, and each stretch of cable keeps its place. */
	@Test
	void aBackboneToldFromTheOtherEndGivesTheSame() {
		PowerFlow told = mixed("lamp", "radio", "amp", "halfAmp", "");
		PowerFlow turned = ComputedBoat.of(TestParts.CATALOG.replace("backbone plain male, plain female", "backbone plain female, plain male")
				.replace("backbone rough male, rough female", "backbone rough female, rough male") + """
				series trial {
					bank service { 12 V; internal resistance 20 mohm }
					supply house { from service; fuse 5 A of glass; lead 3 m each way of 2.5 mm2 }
					network net of kind instrument bus {
						backbone of half {
							terminator r : endFemale
							tee t3 : tee4
							cable 8 m
							tap mid : fused from house
							cable 2 m
							tee t2 : roughTee
							cable 6 m
							tee t1 : tee1
							terminator l : endMale
						}
						drop t1.1 via 2 m of tenth to a : lamp
						drop t2.1 to b : radio
						drop t3.1 via 3 m of tenth to c : amp
						drop t3.2 to d : halfAmp
					}
				}
				""").nominal();

		ALL.forEach(device -> assertEquals(volts(told, device), volts(turned, device), EXACT, device));
	}

	/** Cable from the reel, cut once more and joined wire to wire. */
	@Test
	void aCableCutInTwoGivesTheSame() {
		String whole = MIXED.formatted("lamp", "radio", "amp", "halfAmp", "");
		PowerFlow cut = ComputedBoat.with(whole.replace("cable 8 m", "cable 3 m cable 5 m")).nominal();

		ALL.forEach(device -> assertEquals(volts(ComputedBoat.with(whole).nominal(), device), volts(cut, device), EXACT, device));
	}

	/** Between two tees that are plugged together, a cable of no length brings one pair of contacts more, and nothing else. */
	@Test
	void aCableOfNoLengthAddsItsContactsOnly() {
		String boat = """
				supply house { 12 V }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from house cable 4 m tee t1 : %s %s tee t2 : %s }
					drop t2.1 to a : amp
				}
				""";

		assertEquals(0.8, drop(ComputedBoat.with(boat.formatted("tee1", "", "tee1")).nominal(), "net.a"), EXACT);
		assertEquals(0.8, drop(ComputedBoat.with(boat.formatted("tee1", "cable 0 m", "tee1")).nominal(), "net.a"), EXACT);
		assertEquals(1.0, drop(ComputedBoat.with(boat.formatted("roughTee", "", "roughTee")).nominal(), "net.a"), EXACT,
				"two pairs of worn contacts: cable to tee, and tee to tee");
		assertEquals(1.1, drop(ComputedBoat.with(boat.formatted("roughTee", "cable 0 m", "roughTee")).nominal(), "net.a"), EXACT,
				"a third one");
	}

	@Test
	void hotterWiresNeverDropLess() {
		ComputedBoat boat = ComputedBoat.with(MIXED.formatted("lamp", "radio", "amp", "radio", ""));
		PowerFlow cold = boat.at(new Conditions(BankLevel.NOMINAL, LoadLevel.NOMINAL, Conditions.COLDEST, Optional.empty()));
		PowerFlow hot = boat.at(new Conditions(BankLevel.NOMINAL, LoadLevel.NOMINAL, Conditions.HOTTEST, Optional.empty()));

		ALL.forEach(device -> assertTrue(volts(hot, device) < volts(cold, device), device));
	}

	/** A voltage divider: the bank, 0.4 ohm of cable out and back, and a lamp of 12 ohm. */
	@Test
	void loadsFollowTheirLaw() {
		String boat = """
				supply house { 12 V }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from house cable 2 m tee t1 : tee1 }
					drop t1.1 to a : %s
				}
				""";

		assertEquals(11.6, volts(ComputedBoat.with(boat.formatted("amp")).nominal(), "net.a"), EXACT);
		assertEquals(12 * 12 / 12.4, volts(ComputedBoat.with(boat.formatted("lamp")).nominal(), "net.a"), EXACT);
		assertEquals(6 + Math.sqrt(36 - 12 * 0.4), volts(ComputedBoat.with(boat.formatted("radio")).nominal(), "net.a"), EXACT,
				"U = E/2 + sqrt(E²/4 - P · R)");
	}
}
