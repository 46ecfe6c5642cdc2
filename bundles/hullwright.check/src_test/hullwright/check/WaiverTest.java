/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import hullwright.rules.report.CheckReport;
import hullwright.rules.report.SetAside;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Findings that a yard lives with; today is 2030-01-01.
 */
class WaiverTest {

	private static final String DROPS = """
			drop bow.1 via 5.5 m of light to radar : instrumentDisplay
			drop stern.1 via 5.6 m of light to depth : instrumentDisplay
			""";

	private static final String RADAR = "advice cabling/drop-too-long: the drop to radar is 5.5 m long; the limit is 5 m";
	private static final String DEPTH = "advice cabling/drop-too-long: the drop to depth is 5.6 m long; the limit is 5 m";

	private static CheckReport waiving(String waivers) {
		return Boats.check(Boats.skerry(waivers, DROPS));
	}

	@Test
	void aWaivedFindingDoesNotCountAndTheReportKeepsItWithTheReason() {
		CheckReport report = waiving("waive cabling/drop-too-long on instruments.radar because \"console moves aft\"");
		assertEquals(List.of(DEPTH), Boats.findings(report));
		assertEquals(1, report.setAside().size());
		assertEquals("Skerry.instruments.radar", report.setAside().get(0).finding().finding().element());
		SetAside.Waived waived = assertInstanceOf(SetAside.Waived.class, report.setAside().get(0).why());
		assertEquals("console moves aft", waived.reason());
		assertEquals(Optional.empty(), waived.until());
		assertEquals(3, waived.place().line());
	}

	@Test
	void aWaiverHoldsOnItsLastDayAndNotOnTheNext() {
		assertEquals(List.of(DEPTH), Boats.findings(waiving("waive cabling/drop-too-long on instruments.radar because \"x\" until 2030-01-01")));
		assertEquals(List.of("warning project/waiver-expired: the waiver of cabling/drop-too-long on Skerry.instruments.radar ended on 2029-12-31", RADAR, DEPTH),
				Boats.findings(waiving("waive cabling/drop-too-long on instruments.radar because \"x\" until 2029-12-31")));
	}

	@Test
	void aWaiverOfNoRuleIsAnError() {
		assertEquals(List.of("error project/waiver-unknown-rule: there is no rule 'cabling/drop-to-long' to waive", RADAR, DEPTH),
				Boats.findings(waiving("waive cabling/drop-to-long on instruments.radar because \"x\"")));
	}

	@Test
	void aWaiverThatNothingNeedsIsAWarning() {
		assertEquals(List.of("warning project/waiver-unused: cabling/drop-too-long finds nothing on Skerry.instruments.echo, so there is nothing to waive",
				RADAR, DEPTH), Boats.findings(waiving("waive cabling/drop-too-long on instruments.echo because \"x\"")));
	}

	@Test
	void aWaiverWithoutReasonDoesNotCount() {
		assertEquals(List.of("error project/waiver-without-reason: the waiver of cabling/drop-too-long gives no reason, so it does not count", RADAR, DEPTH),
				Boats.findings(waiving("waive cabling/drop-too-long on instruments.radar because \" \"")));
	}

	/** What one boat lacks another may have. */
	@Test
	void onOneBoatAloneNoWaiverIsCalledUnused() {
		String text = Boats.skerry("options { far \"Far\" } waive cabling/drop-too-long on instruments.radar because \"x\"",
				"drop bow.1 via 5.5 m of light to radar : instrumentDisplay when far");
		CheckRequest plain = new CheckRequest(Snapshot.of(Map.of("boat.hull", text)), Set.of(), new WantedBoats.WithOptions(new TreeSet<>()), Boats.DAY);
		assertEquals(List.of(), Boats.findings(Checker.create().check(plain)));
		assertEquals(List.of(), Boats.findings(Boats.check(text)));
	}

	@Test
	void aWaiverOfARuleThatIsOffIsNotCalledUnused() {
		String text = Boats.skerry("waive cabling/drop-too-long on instruments.radar because \"x\"", DROPS);
		CheckReport report = Checker.create().check(CheckRequest.ofAll(
				Snapshot.of(Map.of("boat.hull", text, "yard.hull", "profile Yard from standard { cabling/drop-too-long off }")), LocalDate.of(2030, 1, 1)));
		assertEquals(List.of(), Boats.findings(report));
	}
}
