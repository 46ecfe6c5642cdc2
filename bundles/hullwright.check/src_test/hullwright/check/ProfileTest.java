/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.RuleRun;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * What a house sets in its profile is in force, and what it sets wrongly is said.
 */
class ProfileTest {

	private static final String BOAT = Boats.skerry("", "drop bow.1 via 5.5 m of light to radar : instrumentDisplay");

	private static CheckReport check(String profile) {
		return Checker.create().check(CheckRequest.ofAll(Snapshot.of(Map.of("boat.hull", BOAT, "yard.hull", profile)), Boats.DAY));
	}

	@Test
	void limitsOfTheHouseReplaceTheStandardOnes() {
		CheckReport report = check("profile Yard from standard {\n  cabling/drop-too-long { warning above 4 m; error above 5.2 m }\n}");
		assertEquals(List.of("error cabling/drop-too-long: the drop to radar is 5.5 m long; the limit is 5.2 m"), Boats.findings(report));
		assertEquals("profile Yard, yard.hull line 2", report.findings().get(0).finding().source());
	}

	@Test
	void aRuleCanBeSwitchedOffAndTheReportSaysSo() {
		CheckReport report = check("profile Yard from standard { cabling/drop-too-long off }");
		assertEquals(List.of(), Boats.findings(report));
		assertTrue(report.rules().stream().anyMatch(run -> run.rule().equals("cabling/drop-too-long") && run.state() == RuleRun.State.OFF));
	}

	@Test
	void wrongSettingsAreFindingsAndTheStandardStaysInForce() {
		assertEquals(List.of(
				"advice cabling/drop-too-long: the drop to radar is 5.5 m long; the limit is 5 m",
				"error project/profile-setting-wrong: a profile starts from 'standard'; there is no profile 'house'",
				"error project/profile-setting-wrong: cabling/drop-too-long has limits of length, such as '6 m', not '4 V'",
				"error project/profile-setting-wrong: there is no rule 'cabling/drop-to-long'",
				"error project/profile-setting-wrong: cabling/terminator-missing has no limits to set; it can be switched off"),
				Boats.findings(check("""
						profile Yard from house {
						  cabling/drop-too-long { error above 4 V }
						  cabling/drop-to-long off
						  cabling/terminator-missing { error above 4 m }
						}
						""")));
	}

	@Test
	void aRuleWithoutLimitsTakesASeverityAlone() {
		String open = BOAT.replace("terminator left : endFemale", "");
		CheckReport report = Checker.create().check(CheckRequest.ofAll(Snapshot.of(Map.of("boat.hull", open,
				"yard.hull", "profile Yard from standard { cabling/terminator-missing warning\n cabling/drop-too-long off }")), Boats.DAY));
		assertEquals(List.of("warning cabling/terminator-missing: no terminator at the start of the backbone, beyond bow: 1 fitted, 2 needed"),
				Boats.findings(report));
		assertEquals(List.of("advice cabling/drop-too-long: the drop to radar is 5.5 m long; the limit is 5 m",
				"error project/profile-setting-wrong: cabling/drop-too-long has limits, each with its severity: write '{ warning above 6 m }'"),
				Boats.findings(check("profile Yard from standard { cabling/drop-too-long warning }")));
	}

	@Test
	void whatIsRequiredInVainIsAnErrorAndTheRestIsInForce() {
		assertEquals(List.of(
				"warning series/label-missing: radar has no label",
				"advice cabling/drop-too-long: the drop to radar is 5.5 m long; the limit is 5 m",
				"error project/profile-setting-wrong: 'label on every ship' cannot be required; what can be is label on every device, "
						+ "label on every part, label on every feed, place on every device, place on every part, article on every part",
				"error project/profile-setting-wrong: 'spare' is no value that cabling/drop-too-long works with"),
				Boats.findings(check("""
						profile Yard from standard {
						  require label on every device
						  require label on every ship
						  cabling/drop-too-long { spare 2 }
						}
						""")));
	}

	@Test
	void aDemandOfTheHouseIsTheSourceOfItsFinding() {
		CheckReport report = check("profile Yard from standard {\n  require label on every device\n  cabling/drop-too-long off\n}");
		assertEquals("profile Yard, yard.hull line 2", report.findings().get(0).finding().source());
	}

	@Test
	void aRuleThatIsUsuallyOffRunsWhereAProfileAsksForIt() {
		RuleDescription quiet = RuleDescription.of("house/any-network", "A network", Severity.ADVICE, "there is a network", "the test").offByDefault();
		RuleSet rules = new RuleSet(List.of(new LoadedRule(new OfEveryNetwork(quiet), quiet, "the test")), List.of());
		assertEquals(List.of(), Boats.findings(checked(rules, "")));
		assertEquals(List.of("advice house/any-network: there is a network"), Boats.findings(checked(rules, "profile Yard from standard { house/any-network on }")));
		assertEquals(List.of("warning house/any-network: there is a network"),
				Boats.findings(checked(rules, "profile Yard from standard { house/any-network warning }")));
	}

	private static CheckReport checked(RuleSet rules, String profile) {
		return Checker.with(rules).check(CheckRequest.ofAll(Snapshot.of(Map.of("boat.hull", BOAT, "yard.hull", profile)), Boats.DAY));
	}

	private record OfEveryNetwork(RuleDescription description) implements BoatRule {

		@Override
		public List<Finding> check(BoatUnderCheck boat) {
			return boat.boat().networks().stream().map(network -> boat.finding(network.origin()).build()).toList();
		}
	}

	@Test
	void aSecondProfileIsAnError() {
		assertTrue(Boats.findings(check("profile A from standard { }\nprofile B from standard { }"))
				.contains("error project/two-profiles: a project has one profile, and 'A' in yard.hull is it"));
	}
}
