/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.electrics;

import static java.time.Duration.ofSeconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.power.PowerProblem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Boats whose electrics cannot be computed as told: each has its problem, told once, and all results are numbers.
 */
class BadElectricsTest {

	private static final String ENDLESS = "an iteration without an end";

	/** All electrics of a boat; fails on NaN and infinity anywhere in them. */
	private static BoatElectrics electrics(String text) {
		BoatElectrics electrics = assertTimeoutPreemptively(ofSeconds(60), () -> BoatElectrics.of(ComputedBoat.of(text).boat()), ENDLESS);
		assertEquals(List.of(), EveryNumber.notFiniteIn(electrics));
		return electrics;
	}

	private static List<PowerProblem> problems(String series) {
		return electrics(TestParts.CATALOG + "series trial {\n" + series + "\n}").states().get(0).nominal().problems();
	}

	@Test
	void twoNetworksWithoutASupplyAreTwoProblemsHoweverManyDevicesHangOnThem() {
		assertEquals(List.of(
				new PowerProblem.Unfed("trial.net", List.of("trial.net.a", "trial.net.b", "trial.net.c")),
				new PowerProblem.Unfed("trial.engines", List.of("trial.engines.d", "trial.engines.e"))), problems("""
				network net of kind instrument bus {
					backbone of tenth { tee t1 : tee4 cable 5 m tee t2 : tee4 }
					drop t1.1 to a : amp
					drop t1.2 to b : radio
					drop t2.1 to c : lamp
				}
				network engines of kind engine bus {
					backbone of tenth { tee t1 : tee4 }
					drop t1.1 to d : amp
					drop t1.2 to e : amp
				}
				"""));
	}

	/** A stretch of the supply conductor between two isolators that nothing enters. */
	@Test
	void anIslandIsTold() {
		assertEquals(List.of(new PowerProblem.Unfed("trial.net", List.of("trial.net.b"))), problems("""
				supply house { 12 V }
				network net of kind instrument bus {
					backbone of tenth {
						tap start : inlet from house
						tee t1 : tee1
						isolator i1 : gap
						cable 5 m
						tee t2 : tee1
						isolator i2 : gap
						tee t3 : tee1
						tap end : inlet from house
					}
					drop t1.1 to a : amp
					drop t2.1 to b : amp
					drop t3.1 to c : amp
				}
				"""));
	}

	/** 12 W over 3.2 ohm cannot come from 12 V: at most E²/(4 R) = 11.25 W can. */
	@Test
	void aDeviceThatCannotBeFedIsNamedWithTheShareThatCan() {
		List<PowerProblem> problems = problems("""
				supply house { 12 V }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from house tee t1 : tee1 cable 16 m tee t2 : tee1 }
					drop t1.1 to close : lamp
					drop t2.1 to far : radio
				}
				""");

		assertEquals(1, problems.size());
		PowerProblem.CannotBeFed problem = assertInstanceOf(PowerProblem.CannotBeFed.class, problems.get(0));
		assertEquals("trial.net.far", problem.device());
		assertEquals(11.25 / 12, problem.share(), 1e-6);
	}

	/** 13.8 W out at 80 % are 17.25 W in, and a bank of 24 V behind 10 ohm gives E²/(4 R) = 14.4 W at most. */
	@Test
	void aConverterThatItsBankCannotFeedIsNamed() {
		List<PowerProblem> problems = problems("""
				bank flat { 24 V; internal resistance 10 ohm }
				converter toTwelve { from flat; 13.8 V; efficiency 80 % }
				supply house { from toTwelve }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from house tee t1 : tee1 }
					drop t1.1 to a : amp
				}
				""");

		assertEquals(1, problems.size(), problems + "");
		PowerProblem.CannotBeFed problem = assertInstanceOf(PowerProblem.CannotBeFed.class, problems.get(0));
		assertEquals("trial.toTwelve", problem.device());
		assertEquals(14.4 / 17.25, problem.share(), 1e-6);
	}

	@Test
	void aLoopWithoutAnyResistanceIsTold() {
		List<PowerProblem> problems = problems("""
				supply house { 12 V }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from house tee t1 : tee4 tee t2 : tee4 }
					drop t1.1 to a : amp
					join t1.2 to t2.2
				}
				""");

		assertTrue(!problems.isEmpty(), "something is told");
		problems.forEach(each -> assertInstanceOf(PowerProblem.ZeroResistanceLoop.class, each));
	}

	/** A tap that lets in two banks of 12 V and 24 V, without any wire between. */
	@Test
	void banksSideBySideWithoutAnyResistanceAreTold() {
		List<PowerProblem> problems = problems("""
				supply house { 12 V }
				supply other { 24 V }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from house, other tee t1 : tee4 }
					drop t1.1 to a : amp
				}
				""");

		assertEquals(1, problems.size(), problems + "");
		assertTrue(problems.get(0) instanceof PowerProblem.ParallelSources || problems.get(0) instanceof PowerProblem.ShortedSource, problems + "");
	}

	/** No lengths of leads are told, which is assumed to be none; nothing is wrong with these boats. */
	@ParameterizedTest
	@ValueSource(strings = {
			// each side of the tap has its own supply from the one bank
			"backbone of tenth { tee t1 : tee4 tap mid : split from house, other tee t2 : tee4 }",
			"backbone of tenth { tee t1 : tee4 isolator divide : gap tee t2 : tee4 } feed t1.2 from house feed t2.2 from other",
			// a device that takes the second supply where the first is off
			"backbone of tenth { tee t1 : tee4 tap mid : inlet from house tee t2 : tee4 } drop t1.2 to c : thruster { from house from other }" })
	void leadsWithoutALengthAreNoProblem(String backbone) {
		assertEquals(List.of(), problems("""
				bank service { 12 V }
				supply house { from service }
				supply other { from service }
				network net of kind instrument bus {
					%s
					drop t1.1 to a : amp
					drop t2.1 to b : amp
				}
				""".formatted(backbone)));
	}

	@Test
	void aSupplyOfWhichNoVoltageIsStatedIsTold() {
		List<PowerProblem> problems = problems("""
				supply house { fuse 3 A of glass }
				network net of kind instrument bus {
					backbone of tenth { tap start : inlet from house tee t1 : tee4 }
					drop t1.1 to a : amp
					drop t1.2 to b : amp
				}
				""");

		assertEquals(List.of(new PowerProblem.NoVoltage("trial.house")), problems, "and not the devices behind it as well");
	}

	/** Nothing stops a text from saying these. */
	private static final String ABSURD = """
			catalog Absurd "Invented" {
				family plain { standard; contact %s }
				cable c { power 22 AWG, %s each way }
				tap inlet { backbone plain male, plain female; feeds both sides; fuse each side %s of glass }
				fuse glass { rated 1 A; drops 150 mV; opens at 2 times rated within 10 s }
				tee tee4 { backbone plain male, plain female; ports 1..4 : plain female }
				device load { port bus : plain male; load %s }
				device other { port bus : plain male; load 1 A resistive; own supply, not isolated, draws %s }
			}
			series trial {
				bank service { %s; internal resistance %s }
				converter twelve { from service; 12 V; %s }
				supply house { from twelve; lead %s each way of 2.5 mm2 }
				network net of kind instrument bus {
					backbone of c { tap start : inlet from house cable %s tee t1 : tee4 cable %s tee t2 : tee4 }
					drop t1.1 to a : load
					drop t2.1 via 2 m to b : load
					drop t2.2 to c : other { from house }
				}
			}
			""";

	private static List<PowerProblem> absurd(String contact, String cable, String fuse, String load, String draws, String bank, String inside,
			String converter, String lead, String one, String two) {
		BoatElectrics electrics = electrics(ABSURD.formatted(contact, cable, fuse, load, draws, bank, inside, converter, lead, one, two));
		return electrics.states().get(0).nominal().problems();
	}

	@Test
	void soundValuesAreNoProblem() {
		assertEquals(List.of(), absurd("5 mohm", "50 mohm/m", "1 A", "0.1 A", "5 A", "24 V", "10 mohm", "efficiency 90 %", "1 m", "2 m", "3 m"));
	}

	@Test
	void everythingOfNoLengthAndNoResistance() {
		assertEquals(List.of(), absurd("0 mohm", "0 mohm/m", "1 A", "0.1 A", "5 A", "24 V", "0 mohm", "efficiency 90 %", "0 m", "0 m", "0 m"));
	}

	@Test
	void aBillionAmperes() {
		assertEquals(1, absurd("5 mohm", "50 mohm/m", "1 A", "1000000000 A", "5 A", "24 V", "10 mohm", "efficiency 90 %", "1 m", "2 m", "3 m").size());
		assertEquals(1, absurd("5 mohm", "50 mohm/m", "1 A", "0.1 A", "1000000000 A", "24 V", "10 mohm", "efficiency 90 %", "1 m", "2 m", "3 m").size());
	}

	@Test
	void aBillionMetres() {
		absurd("5 mohm", "50 mohm/m", "1 A", "0.1 A", "5 A", "24 V", "10 mohm", "efficiency 90 %", "1 m", "1000000000 m", "3 m");
		absurd("5 mohm", "50 mohm/m", "1 A", "12 W", "5 A", "24 V", "10 mohm", "efficiency 90 %", "1000000000 m", "2 m", "3 m");
	}

	@Test
	void loadsOfNoResistance() {
		List<PowerProblem> problems = absurd("5 mohm", "50 mohm/m", "1 A", "0 ohm", "5 A", "24 V", "10 mohm", "efficiency 90 %", "1 m", "2 m", "3 m");

		assertTrue(problems.contains(new PowerProblem.AbsurdValue("trial.net.a", 0)), problems + "");
	}

	/** Whatever the curve says: at no current, in no time, told backwards, twice at one current; and a fuse for no current at all. */
	@ParameterizedTest
	@ValueSource(strings = {
			"rated 1 A; drops 150 mV; opens at 0 times rated within 10 s; opens at 10 times rated within 1 s",
			"rated 1 A; drops 150 mV; opens at 2 times rated within 0 s; opens at 10 times rated within 0 s",
			"rated 1 A; drops 150 mV; opens at 10 times rated within 0 s; opens at 2 times rated within 10 s",
			"rated 1 A; drops 150 mV; opens at 2 times rated within 10 s; opens at 2 times rated within 1 s; opens at 1000 times rated within 1 s",
			"rated 1 A; drops 0 mV; opens at 2 times rated within 10 s",
			"rated 1 A; drops 1000000000 V; opens at 2 times rated within 10 s" })
	void fusesWithAbsurdCurves(String fuse) {
		String sound = "rated 1 A; drops 150 mV; opens at 2 times rated within 10 s";
		electrics(ABSURD.replace(sound, fuse).formatted("5 mohm", "50 mohm/m", "1 A", "0.1 A", "5 A", "24 V", "10 mohm", "efficiency 90 %", "1 m", "2 m",
				"3 m"));
	}

	@Test
	void aFuseForNoCurrent() {
		electrics(ABSURD.replace("rated 1 A;", "rated 0 A;").formatted("5 mohm", "50 mohm/m", "0 A", "0.1 A", "5 A", "24 V", "10 mohm", "efficiency 90 %",
				"1 m", "2 m", "3 m"));
	}

	@Test
	void bothEndsOfEveryScale() {
		for (String bank : List.of("0 V", "1000000000 V", "0.000001 V")) {
			for (String load : List.of("0 A", "0 W", "1000000000 W", "0.000000001 ohm", "1000000000000 ohm")) {
				absurd("5 mohm", "50 mohm/m", "1 A", load, "5 A", bank, "10 mohm", "efficiency 1 %", "1 m", "2 m", "3 m");
				absurd("0 mohm", "1000000000 mohm/m", "1 A", load, "0 A", bank, "1000000000 ohm", "efficiency 100 %", "0 m", "2 m", "3 m");
			}
		}
	}
}
