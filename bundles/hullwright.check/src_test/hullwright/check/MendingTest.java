/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.network.CableRun;
import hullwright.quantity.Length;
import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.FixProposal;
import hullwright.rules.edit.SetLength;
import hullwright.rules.report.ReportedFinding;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What can be done about a finding is offered as changes of text that have been tried.
 */
class MendingTest {

	private static String mended(String text, String rule) {
		FixProposal proposal = proposals(text, rule).get(0);
		return proposal.appliedTo("boat.hull", text);
	}

	private static List<FixProposal> proposals(String text, String rule) {
		Checker checker = Checker.create();
		CheckRequest request = Boats.request(text);
		ReportedFinding finding = checker.check(request).findings().stream().filter(each -> each.finding().rule().equals(rule)).findFirst().orElseThrow();
		return checker.proposals(request, finding);
	}

	@Test
	void aMissingUnitIsWritten() {
		String sound = Boats.skerry("", "drop bow.1 via 2 m of light to display : instrumentDisplay");
		String broken = sound.replace("via 2 m", "via 2");
		assertEquals(sound, mended(broken, "language/unit-missing"));
		assertEquals(Fix.Reach.SAFE, proposals(broken, "language/unit-missing").get(0).reach());
	}

	@Test
	void aNearNameIsWritten() {
		String sound = Boats.skerry("", "drop bow.1 via 2 m of light to display : instrumentDisplay");
		assertEquals(sound, mended(sound.replace(": instrumentDisplay", ": instrumentDisplya"), "language/unknown-name"));
	}

	@Test
	void theCatalogThatHasAPartIsImported() {
		String sound = Boats.skerry("", "");
		String without = sound.replace("import \"standard:parts\"\n", "");
		assertEquals("import \"standard:parts\"\n\n" + without, mended(without, "language/unknown-name"));
		assertTrue(Boats.findings(Boats.check(without)).get(0).endsWith("; it is in 'standard:parts'"),
				() -> Boats.findings(Boats.check(without)).toString());
	}

	@Test
	void aCatalogOfTheProjectIsImportedAfterTheOthers() {
		String boat = Boats.skerry("", "").replace("terminator right : endMale", "terminator right : oddEnd");
		Snapshot project = Snapshot.of(Map.of("boats/boat.hull", boat, "kits/odd.hull", """
				import "standard:parts"
				catalog Odd { terminator oddEnd { micro male; 120 ohm } }
				"""));
		Checker checker = Checker.create();
		CheckRequest request = CheckRequest.ofAll(project, Boats.DAY);
		ReportedFinding finding = checker.check(request).findings().stream().filter(each -> each.finding().rule().equals("language/unknown-name")).findFirst().orElseThrow();
		FixProposal proposal = checker.proposals(request, finding).stream().filter(each -> each.title().equals("Import '../kits/odd.hull'")).findFirst().orElseThrow();
		assertEquals(boat.replace("\"standard:parts\"", "\"standard:parts\"\nimport \"../kits/odd.hull\""), proposal.appliedTo("boats/boat.hull", boat));
	}

	@Test
	void anImportThatLeadsNowhereSaysWhatWasPerhapsMeant() {
		String sound = Boats.skerry("", "");
		assertEquals(sound, mended(sound.replace("standard:parts", "standard:partz"), "language/import-not-found"));
	}

	@Test
	void lineEndsTabsAndCommentsStayAsTheyAre() {
		String broken = Boats.skerry("", "").replace("      terminator right : endMale\n", "      // the end, äöü\n").replace("\n", "\r\n").replace("      ", "\t\t\t");
		String mended = mended("\uFEFF" + broken, "cabling/terminator-missing");
		assertEquals("\uFEFF" + broken.replace("// the end, äöü\r\n", "// the end, äöü\r\n\t\t\tterminator endTerminator : endMale\r\n"), mended);
	}

	@Test
	void aTakenNameIsNotTakenAgain() {
		String broken = Boats.skerry("", "drop bow.1 via 2 m of light to endTerminator : instrumentDisplay").replace("      terminator right : endMale\n", "");
		assertTrue(mended(broken, "cabling/terminator-missing").contains("terminator endTerminator2 : endMale\n"));
	}

	@Test
	void whatDoesNotMendIsNotOffered() {
		// the part at the end is a gap in itself: its far connector is of a family for which no terminator is on offer
		String broken = Boats.skerry("", "").replace("      terminator right : endMale\n", "").replace("series Skerry", """
				catalog Odd "Invented" {
				  family odd "One of a kind" { vendor }
				  tee oddTee { backbone Standard.micro male, odd female; port 1 : odd female }
				}
				series Skerry""").replace("tee stern : block4", "tee stern : oddTee").replace("Standard.micro", "micro");
		assertEquals(List.of(), proposals(broken, "cabling/terminator-missing"));
	}

	/** Wants a drop of less than 6 m, and proposes one length that is no mend and four that are. */
	private static final class ShortDrop implements BoatRule {

		@Override
		public RuleDescription description() {
			return RuleDescription.of("trial/drop-not-short", "Drop not short", Severity.WARNING, "the drop is not short", "a trial");
		}

		@Override
		public List<Finding> check(BoatUnderCheck boat) {
			CableRun cable = (CableRun) boat.boat().networks().get(0).drops().get(0).legs().get(0);
			Finding.Builder finding = boat.finding(cable.origin());
			Stream.of(9, 2, 3, 4, 5).map(Length::new).forEach(length -> finding.fix(
					new Fix("Take " + length, Fix.Reach.DESIGN, List.of(new SetLength(cable.origin(), cable.length(), length)))));
			return cable.length().exceeds(new Length(6)) ? List.of(finding.build()) : List.of();
		}
	}

	@Test
	void theFirstThreeThatMendAreOffered() {
		BoatRule rule = new ShortDrop();
		Checker checker = Checker.with(new RuleSet(List.of(new LoadedRule(rule, rule.description(), "a trial")), List.of()));
		CheckRequest request = Boats.request(Boats.skerry("", "drop bow.1 via 8 m of light to display : instrumentDisplay"));
		ReportedFinding finding = checker.check(request).findings().get(0);
		assertEquals(List.of("Take 2 m", "Take 3 m", "Take 4 m"), checker.proposals(request, finding).stream().map(FixProposal::title).toList());
	}
}
