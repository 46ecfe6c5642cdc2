/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.check.baseline.AcceptedFinding;
import hullwright.check.baseline.Baseline;
import hullwright.check.baseline.BaselineFile;
import hullwright.check.baseline.UnusableBaseline;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.SetAside;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Findings that were accepted do not count again, unless they have become worse.
 */
class BaselineTest {

	private static String boat(String radar) {
		return Boats.skerry("", "drop bow.1 via " + radar + " of light to radar : instrumentDisplay");
	}

	private static Baseline accepted(String text, double tolerance) {
		return read(BaselineFile.write(Boats.check(text).findings().stream().map(each -> AcceptedFinding.of(each.finding())).toList(), tolerance));
	}

	private static Baseline read(String json) {
		try {
			return BaselineFile.read("accepted.json", json.getBytes(StandardCharsets.UTF_8));
		} catch (UnusableBaseline e) {
			throw new AssertionError(e);
		}
	}

	private static CheckReport check(String text, Baseline baseline) {
		return Checker.create().check(Boats.request(text).against(baseline));
	}

	@Test
	void whatWasAcceptedDoesNotCountWhereverItStandsNow() {
		Baseline baseline = accepted(boat("7 m"), 0);
		CheckReport report = check("// moved down\n\n" + boat("7 m"), baseline);
		assertEquals(List.of(), Boats.findings(report));
		assertEquals(1, report.countSetAside(SetAside.InBaseline.class));
		assertEquals(baseline.use(), report.baseline().orElseThrow());
		assertEquals(List.of(), Boats.findings(check(boat("6.9 m"), baseline)), "what has become better is accepted, too");
	}

	@Test
	void whatIsWorseCountsAgain() {
		assertEquals(List.of("error cabling/drop-too-long: the drop to radar is 7.2 m long; the limit is 6 m"),
				Boats.findings(check(boat("7.2 m"), accepted(boat("7 m"), 0.01))));
		assertEquals(List.of(), Boats.findings(check(boat("7.05 m"), accepted(boat("7 m"), 0.01))), "within the tolerance: 1 % of 6 m");
		assertEquals(List.of("error cabling/drop-too-long: the drop to radar is 6.1 m long; the limit is 6 m"),
				Boats.findings(check(boat("6.1 m"), accepted(boat("5.9 m"), 0.5))), "an error is worse than advice, however near");
	}

	@Test
	void whatIsNewCounts() {
		assertEquals(List.of("error cabling/drop-too-long: the drop to wind is 6.5 m long; the limit is 6 m"),
				Boats.findings(check(Boats.skerry("", """
						drop bow.1 via 7 m of light to radar : instrumentDisplay
						drop bow.2 via 6.5 m of light to wind : instrumentDisplay
						"""), accepted(boat("7 m"), 0))));
	}

	@Test
	void whatIsNoLongerFoundIsTold() {
		assertEquals(List.of("advice project/baseline-stale: the baseline accepts cabling/drop-too-long on Skerry.instruments.radar, which is no longer found; "
				+ "accept the findings anew"), Boats.findings(check(boat("2 m"), accepted(boat("7 m"), 0))));
	}

	@Test
	void aBaselineIsWrittenTheSameWayWhateverTheOrder() {
		List<AcceptedFinding> findings = Boats.check(boat("7 m").replace("terminator left : endFemale", "")).findings().stream()
				.map(each -> AcceptedFinding.of(each.finding())).toList();
		assertTrue(findings.size() > 1);
		List<AcceptedFinding> turned = List.of(findings.get(1), findings.get(0));
		assertEquals(BaselineFile.write(findings, 0.01), BaselineFile.write(turned, 0.01));
	}

	private static final String SOUND = """
			{"format": "hullwright-baseline", "version": 1, "tolerance_share": 0.01, "accepted": [
			{"rule": "cabling/drop-too-long", "element": "Skerry.instruments.radar", "key": "", "severity": "error", "beyondLimit_share": 0.2}]}""";

	@Test
	void soundTextIsRead() {
		assertEquals(1, read(SOUND).use().entries());
	}

	/** Damaged, cut, edited by hand or of another time: never taken to be empty. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', value = {
			"}]}| |accepted.json:2:", "\"version\": 1|\"version\": 2|it is of version 2; this program understands version 1",
			"hullwright-baseline|some-list|'format' is 'some-list'", "\"error\"|\"grave\"|at accepted[0]: 'severity' is 'grave'; it is advice, warning or error",
			"\"key\": \"\", ||at accepted[0]: 'key' is missing", "\"key\"|\"line\": 3, \"key\"|at accepted[0]: 'line' is unknown",
			"0.2|\"0.2\"|at accepted[0]: 'beyondLimit_share' is no number", "0.2|-1|at accepted[0]: 'beyondLimit_share' is -1.0; it is a number from 0",
			"0.01|7|'tolerance_share' is 7.0; it is from 0 to 1", "\"accepted\"|\"exepted\"|'exepted' is unknown",
			"cabling/drop-too-long|Drop too long|at accepted[0]: 'rule' is 'Drop too long', which is no id of a rule" })
	void whatIsNoBaselineIsRefusedWithItsPlace(String old, String changed, String message) {
		String text = SOUND.replace(old, changed == null ? "" : changed);
		UnusableBaseline refused = assertThrows(UnusableBaseline.class, () -> BaselineFile.read("accepted.json", text.getBytes(StandardCharsets.UTF_8)), text);
		assertTrue(refused.getMessage().contains(message), refused.getMessage());
		assertTrue(refused.getMessage().startsWith("accepted.json"), refused.getMessage());
	}

	@Test
	void anEmptyFileIsNoEmptyBaseline() {
		for (String text : List.of("", " ", "null", "[]", "{}", "\uFFFF")) {
			assertThrows(UnusableBaseline.class, () -> BaselineFile.read("accepted.json", text.getBytes(StandardCharsets.UTF_8)), text);
		}
		assertThrows(UnusableBaseline.class, () -> BaselineFile.read("accepted.json", new byte[] { (byte) 0xC3 }));
	}

	@Test
	void anEntryTwiceIsRefused() {
		String entry = SOUND.substring(SOUND.indexOf("{\"rule\""), SOUND.indexOf("]}"));
		String text = SOUND.replace(entry, entry + ", " + entry);
		assertTrue(assertThrows(UnusableBaseline.class, () -> BaselineFile.read("accepted.json", text.getBytes(StandardCharsets.UTF_8))).getMessage()
				.contains("accepted[1] is there twice"));
	}
}
