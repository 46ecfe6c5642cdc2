/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.rules.report.CheckReport;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Which boats are checked, and on which of them a finding is said to occur.
 */
class OrderableBoatsTest {

	private static final String LONG_DROP = "drop bow.1 via 7 m of light to radar : instrumentDisplay";

	@Test
	void requiresExcludesAndOneOfLeaveTheBoatsThatCanBeOrdered() {
		CheckReport report = checked(Boats.skerry("options { a; b requires a; c excludes a; one of petrol, diesel }", ""));
		// by hand: {}, a, ab, c without the engines; times two engines
		assertEquals(8, report.series().get(0).combinations());
		assertTrue(report.series().get(0).allCombinations());
	}

	@Test
	void aFindingIsShownOnceWithItsCondition() {
		assertEquals(List.of("error cabling/drop-too-long: the drop to radar is 7 m long; the limit is 6 m [when offshore and not mast]"),
				Boats.findings(checked(Boats.skerry("options { offshore; mast; flybridge }", LONG_DROP + " when offshore and not mast"))));
	}

	@Test
	void whatIsOnEveryBoatHasNoCondition() {
		assertEquals(List.of("error cabling/drop-too-long: the drop to radar is 7 m long; the limit is 6 m"),
				Boats.findings(checked(Boats.skerry("options { offshore; mast }", LONG_DROP))));
	}

	@Test
	void aConditionIsNotLongerForWhatCannotBeOrdered() {
		// radar comes with offshore only, so "radar" says it all
		assertEquals(List.of("error cabling/drop-too-long: the drop to radar is 7 m long; the limit is 6 m [when radarPack]"),
				Boats.findings(checked(Boats.skerry("options { offshore; radarPack requires offshore }", LONG_DROP + " when radarPack and offshore"))));
	}

	@Test
	void theWorstBoatLendsItsFigures() {
		String text = Boats.skerry("options { offshore }", LONG_DROP)
				.replace("network instruments", "hull 3 with offshore { instruments.radar via 9 m of light }\n  network instruments");
		assertEquals(List.of("error cabling/drop-too-long: the drop to radar is 9 m long; the limit is 6 m"), Boats.findings(checked(text)));
	}

	@Test
	void aHullMayHaveWhatNoOtherBoatHas() {
		String text = Boats.skerry("""
				hull 1
				hull 2 { add drop instruments.stern.2 via 8 m of light to horn : fogSignal }
				hull 3 { instruments.display via 6.5 m of light }
				hull 4 { remove instruments.display }
				""", "drop bow.1 via 2 m of light to display : instrumentDisplay");
		assertEquals(List.of(
				"error cabling/drop-too-long: the drop to horn is 8 m long; the limit is 6 m [only on hull 2]",
				"error cabling/drop-too-long: the drop to display is 6.5 m long; the limit is 6 m [only on hull 3]"),
				Boats.findings(checked(text)));
	}

	@Test
	void aPreparedDropIsCheckedWhereItsDeviceIsNotFitted() {
		assertEquals(List.of("error cabling/drop-too-long: the drop to radar is 7 m long; the limit is 6 m"),
				Boats.findings(checked(Boats.skerry("options { offshore }", LONG_DROP + " when offshore, else prepared"))));
	}

	@Test
	void oneBoatCanBeAskedFor() {
		Snapshot snapshot = Snapshot.of(Map.of("boat.hull", Boats.skerry("options { offshore }", LONG_DROP + " when offshore")));
		assertEquals(0, with(snapshot).findings().size());
		assertEquals(1, with(snapshot, "offshore").findings().size());
		assertEquals(List.of("series Skerry: there is no option 'mast'"), with(snapshot, "mast").gaps());
	}

	private static CheckReport with(Snapshot snapshot, String... options) {
		return Checker.create().check(new CheckRequest(snapshot, Set.of(), new WantedBoats.WithOptions(new TreeSet<>(List.of(options))), Boats.DAY));
	}

	@Test
	void upToTheBoundEveryCombinationIsChecked() {
		CheckReport report = checked(Boats.skerry("options { " + options(12) + " }", LONG_DROP + " when o11"));
		assertEquals(4096, report.series().get(0).combinations());
		assertEquals(List.of(), report.gaps());
		assertEquals(List.of("error cabling/drop-too-long: the drop to radar is 7 m long; the limit is 6 m [when o11]"), Boats.findings(report));
	}

	@Test
	void beyondTheBoundTheReportSaysThatItIsNotAll() {
		CheckReport report = checked(Boats.skerry("options { " + options(40) + " }", LONG_DROP + " when o11"));
		assertFalse(report.complete());
		assertFalse(report.series().get(0).allCombinations());
		assertEquals(List.of("error cabling/drop-too-long: the drop to radar is 7 m long; the limit is 6 m [when for example o11]"), Boats.findings(report));
	}

	@Test
	void optionsThatContradictEachOtherAreAFindingAndNoCleanReport() {
		CheckReport report = checked(Boats.skerry("options { one of a requires b, b }", ""));
		assertEquals(1, report.series().get(0).combinations(), "b alone can be ordered");
		CheckReport contradicting = checked(Boats.skerry("options { one of a requires c, b requires c; c excludes a and b }", ""));
		assertEquals(List.of(), contradicting.gaps(), "the finding says it");
		assertTrue(Boats.findings(contradicting).contains("error series/no-buildable-boat: no boat of Skerry can be ordered: whatever is chosen, "
				+ "some option requires what another excludes"), () -> Boats.findings(contradicting).toString());
	}

	@Test
	void aSecondBackboneIsABackboneEvenIfNothingIsInIt() {
		CheckReport report = checked("""
				import "standard:parts"
				series Skerry {
				  network instruments {
				    backbone of light { tee only : tee1 }
				    backbone { }
				    backbone of light { tee other : tee1 }
				  }
				}
				""");
		assertEquals(List.of("error cabling/several-backbones: instruments has 3 backbones; a network is one line with two ends, or two networks with a bridge between"),
				Boats.findings(report).stream().filter(finding -> finding.contains(" cabling/")).toList());
	}

	/** Options of these tests need not change anything. */
	private static CheckReport checked(String text) {
		return Boats.check(text + "profile Trial from standard { series/option-never-used off }\n");
	}

	private static String options(int count) {
		return IntStream.range(0, count).mapToObj(number -> "o" + number).collect(Collectors.joining("; "));
	}
}
