/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A quantity that is wrong is told so where it stands, with what was expected. */
class QuantityMessagesTest {

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			cable «6»                        | a length needs a unit, for example '6 m'
			cable «7.5» of light             | a length needs a unit, for example '7.5 m'
			cable «6 metres»                 | unknown unit 'metres'; a length is given in m, mm, cm, km, ft or in
			cable «6 M»                      | unknown unit 'M'; a length is given in m, mm, cm, km, ft or in
			cable «6 V»                      | '6 V' is a voltage, but a length is expected, for example '6 m'
			cable «6 mm2»                    | '6 mm2' is a conductor size, but a length is expected, for example '6 m'
			cable «-6 m»                     | '-6 m': a length cannot be negative
			cable «6 m/s»                    | unknown unit 'm/s'; a length is given in m, mm, cm, km, ft or in
			""")
	void inABackbone(String cable, String message) {
		MarkedText.of("""
				catalog C { cable light { stock 1 m } }
				series S { network n { backbone of light {
					%s
				} } }
				""".formatted(cable)).assertProblems(message);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			cable c { rated «3» }                         | a current needs a unit, for example '3 A'
			cable c { rated «3 a» }                       | unknown unit 'a'; a current is given in A, mA or LEN
			cable c { rated «3 V» }                       | '3 V' is a voltage, but a current is expected, for example '3 A'
			cable c { power «22» }                        | a conductor size needs a unit, for example '22 mm2'
			cable c { power «22.5 AWG» }                  | '22.5 AWG' is no conductor size; write one as '1.5 mm2'
			cable c { power «99 AWG» }                    | '99 AWG' is no conductor size; write one as '1.5 mm2'
			cable c { power 22 AWG, «57 mohm» each way }  | '57 mohm' is a resistance, but a resistance per length is expected, for example '57 mohm/m'
			cable c { delay «4.46» }                      | a delay per length needs a unit, for example '4.46 ns/m'
			cable c { stock 1 m, «2», 3 m }               | a length needs a unit, for example '2 m'
			terminator t { «120» }                        | a resistance needs a unit, for example '120 ohm'
			terminator t { «120 m» }                      | '120 m' is a length, but a resistance is expected, for example '120 ohm'
			device d { supply «9» .. 16 V }               | a voltage needs a unit, for example '9 V'
			device d { supply 9 V .. «16» }               | a voltage needs a unit, for example '16 V'
			device d { load «3» }                         | a load needs a unit, for example '3 A'
			device d { load «3 V» }                       | '3 V' is no load; one is given in A, mA, LEN, W, mW, ohm, Ω, mohm, kohm
			device d { load «3 w» }                       | '3 w' is no load; one is given in A, mA, LEN, W, mW, ohm, Ω, mohm, kohm
			sentence DPT { every «3 m» }                  | '3 m' is a length, but a duration is expected, for example '250 ms'
			fuse f { opens at 2 times rated within «5» }  | a duration needs a unit, for example '5 s'
			device d { line a : talker, «4800» }          | a bit rate needs a unit, for example '4800 baud'
			""")
	void inACatalog(String part, String message) {
		MarkedText.of("catalog C {\n\t" + part + "\n}\n").assertProblems(message);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			converter c { efficiency «85» }               | an efficiency needs a unit, for example '85 %'
			converter c { efficiency «0.85»; isolated }   | an efficiency needs a unit, for example '85 %'
			converter c { 12 V, efficiency «120 %» }      | '120 %': an efficiency is above 0 % and at most 100 %
			converter c { efficiency «0 %» }              | '0 %': an efficiency is above 0 % and at most 100 %
			converter c { efficiency «85 W» }             | '85 W' is a power, but a percentage is expected, for example '85 %'
			converter c { at most «6 %»; 12 V }           | '6 %' is a percentage, but a current is expected, for example '3 A'
			""")
	void inASeries(String source, String message) {
		MarkedText.of("series S {\n\t" + source + "\n}\n").assertProblems(message);
	}

	/** The place is that of the number and its unit, without the comments around. */
	@Test
	void thePlaceIsThatOfTheQuantityAlone() {
		MarkedText.of("""
				catalog C {
					// rated 3
					cable c {
						rated /* at 40 degrees */ «3» // amperes
						delay 4.46 ns/m
					}
				}
				""").assertProblems("a current needs a unit, for example '3 A'");
	}

	@Test
	void everyWrongQuantityIsToldNotOnlyTheFirst() {
		MarkedText.of("""
				catalog C {
					cable light { rated «3», delay «4.46», stock «1», 2 m }
				}
				series S {
					supply house { «12», lowest 11.0 V, highest «14.6», lead «4» each way of «1.5» }
				}
				""").assertProblems(
				"a current needs a unit, for example '3 A'",
				"a delay per length needs a unit, for example '4.46 ns/m'",
				"a length needs a unit, for example '1 m'",
				"a voltage needs a unit, for example '12 V'",
				"a voltage needs a unit, for example '14.6 V'",
				"a length needs a unit, for example '4 m'",
				"a conductor size needs a unit, for example '1.5 mm2'");
	}

	/** The decimal comma of half of Europe separates two items here; the reader is told at the number before it. */
	@Test
	void aDecimalCommaIsNoPoint() {
		MarkedText.of("catalog C { cable c { stock «7»,5 m } }").assertProblems("a length needs a unit, for example '7 m'");
	}

	@Test
	void aLimitInAProfileTakesAnyQuantityButNeedsOne() {
		MarkedText.of("profile P from standard { cabling/drop-too-long { advice above 5 m; error above «6» } }")
				.assertProblems("a length needs a unit, for example '6 m'");
	}

	@Test
	void aLimitInAProfileMayBeInPerCent() {
		MarkedText.of("profile P from standard { traffic/load-high { advice above 50 %; error above 85.5% } }").assertProblems();
	}
}
