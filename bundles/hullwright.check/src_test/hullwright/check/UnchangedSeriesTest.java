/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hullwright.rules.BoatRule;
import hullwright.rules.BoatUnderCheck;
import hullwright.rules.Finding;
import hullwright.rules.RuleDescription;
import hullwright.rules.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A change of one text has the boats checked that it concerns, and no others; what is found is what a fresh engine finds.
 */
class UnchangedSeriesTest {

	private static final String SKERRY = Boats.skerry("", "drop bow.1 via 5.5 m of light to radar : instrumentDisplay");
	private static final String HOLM = SKERRY.replace("series Skerry", "series Holm");
	private static final String PROFILE = "profile Yard from standard {\n}\n";

	private final Looking looking = new Looking();
	private final Checker checker = Checker.with(new RuleSet(List.of(new LoadedRule(looking, looking.description(), "the test")), List.of()));

	/** Notes which boats it is shown. */
	private static final class Looking implements BoatRule {

		private final List<String> shown = new ArrayList<>();

		@Override
		public RuleDescription description() {
			return RuleDescription.of("house/shown", "Shown", Severity.ADVICE, "it is shown {name}", "the test");
		}

		@Override
		public List<Finding> check(BoatUnderCheck boat) {
			shown.add(boat.boat().series());
			return List.of(boat.finding(boat.boat().networks().get(0).origin()).value("name", boat.boat().series()).build());
		}
	}

	private List<String> shown(String skerry, String holm, String profile) {
		looking.shown.clear();
		CheckRequest request = CheckRequest.ofAll(Snapshot.of(Map.of("skerry.hull", skerry, "holm.hull", holm, "yard.hull", profile)), Boats.DAY);
		List<String> found = Boats.findings(checker.check(request));
		List<String> again = List.copyOf(looking.shown);
		Checker fresh = Checker.with(new RuleSet(List.of(new LoadedRule(looking, looking.description(), "the test")), List.of()));
		assertEquals(Boats.findings(fresh.check(request)), found);
		return again;
	}

	@Test
	void onlyWhatChangesIsCheckedAgain() {
		assertEquals(List.of("Holm", "Skerry"), shown(SKERRY, HOLM, PROFILE));
		assertEquals(List.of(), shown(SKERRY, HOLM, PROFILE));
		assertEquals(List.of("Skerry"), shown(SKERRY.replace("5.5 m", "5 m"), HOLM, PROFILE));
	}

	@Test
	void anotherProfileHasEverythingCheckedAgain() {
		shown(SKERRY, HOLM, PROFILE);
		assertEquals(List.of("Holm", "Skerry"), shown(SKERRY, HOLM, "profile Yard from standard {\n house/shown warning\n}\n"));
		assertEquals(List.of("Holm", "Skerry"), shown(SKERRY, HOLM, "profile Yard from standard {\n house/shown warning\n require label on every device\n}\n"));
		assertEquals(List.of(), shown(SKERRY, HOLM, "profile Yard from standard {\n house/shown warning\n require label on every device\n}\n// the same"));
	}

	@Test
	void theOneBoatAndAllBoatsAreToldApart() {
		shown(SKERRY, HOLM, PROFILE);
		looking.shown.clear();
		Snapshot snapshot = Snapshot.of(Map.of("skerry.hull", SKERRY, "holm.hull", HOLM, "yard.hull", PROFILE));
		checker.check(new CheckRequest(snapshot, Set.of(), new WantedBoats.Plainest(), Boats.DAY));
		assertEquals(List.of("Holm", "Skerry"), looking.shown);
	}
}
