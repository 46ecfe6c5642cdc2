/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hullwright.check.Addition;
import hullwright.check.CatalogInText;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.FileLayout;
import hullwright.check.SeriesInText;
import hullwright.check.Snapshot;
import hullwright.rules.edit.TextChange;
import hullwright.rules.report.CheckReport;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What a person begins with works as it is: it parses, nothing is found, and the formatter has nothing to do.
 */
class StarterTextsTest {

	private static final Checker CHECKER = Checker.create();
	private static final String PROFILE = new StarterProfile("Yard", "Limits of the \"Yard\"").text();

	private static void expectSound(String file, String text) {
		Snapshot snapshot = Snapshot.of(Map.of("yard.hull", PROFILE, file, text));
		CheckReport report = CHECKER.check(CheckRequest.ofAll(snapshot, LocalDate.of(2026, 1, 1)));
		assertEquals(List.of(), report.findings().stream().map(each -> each.finding().rule() + ": " + each.finding().message()).toList(), text);
		assertEquals(List.of(), report.gaps(), text);
		for (String each : snapshot.files().keySet()) {
			FileLayout layout = FileLayout.of(snapshot.files().get(each));
			assertEquals(List.of(), layout.problems(), text);
			assertEquals(snapshot.text(each).orElseThrow(), new String(layout.bytes(), StandardCharsets.UTF_8));
		}
	}

	@ParameterizedTest
	@EnumSource
	void eachChoiceOfDevicesIsASoundSeries(StarterSeries.Voltage voltage) {
		StarterSeries.Device[] all = StarterSeries.Device.values();
		for (int chosen = 1; chosen < 1 << all.length; chosen++) {
			List<StarterSeries.Device> devices = new ArrayList<>();
			for (int each = 0; each < all.length; each++) {
				if ((chosen & 1 << each) != 0) {
					devices.add(all[each]);
				}
			}
			expectSound("boat.hull", new StarterSeries("Skerry", "Day boat", "A", voltage, devices).text());
		}
		expectSound("boat.hull", new StarterSeries("Skerry", "", "", voltage, List.of(StarterSeries.Device.DISPLAY)).text());
	}

	@ParameterizedTest
	@EnumSource
	void eachKindOfPartIsSoundInACatalogOfItsOwn(PartKind kind) {
		StarterPart part = new StarterPart(kind, "spare", "Our own", "micro", Map.of("other", "push"), "K-1", "data sheet of 2026, p. 2");
		expectSound("kit.hull", part.file("Kit", "What we \"stock\""));
		expectSound("kit.hull", new StarterPart(kind, "spare", "", "micro", Map.of("other", "push"), "", "").file("Kit", ""));
	}

	@ParameterizedTest
	@EnumSource
	void eachKindOfPartIsSoundInACatalogThatIsThere(PartKind kind) {
		for (String catalog : List.of("import \"standard:parts\"\n\ncatalog Kit {\n}\n",
				"import \"standard:parts\"\n\ncatalog Kit \"Ours\" {\n\tcap other { end micro male }\n}\n")) {
			Snapshot snapshot = Snapshot.of(Map.of("kit.hull", catalog));
			CatalogInText kit = CHECKER.texts().catalogs(snapshot).get(0);
			assertTrue(kit.families().contains("micro"), kit.toString());
			StarterPart part = new StarterPart(kind, "spare", "Our own", "micro", Map.of("other", "push"), "", "data sheet");
			expectSound("kit.hull", changed(snapshot, new Addition(Addition.Kind.PART, kit.origin(), part.statement())));
		}
	}

	@Test
	void aHullStandsBelowTheOthers() {
		String series = new StarterSeries("Skerry", "Day boat", "A", StarterSeries.Voltage.V12, List.of(StarterSeries.Device.DISPLAY)).text();
		String options = series.replace("\tplaces {", "\toptions {\n\t\tone of single \"One engine\", twin \"Two engines\"\n\t\tflybridge requires twin\n\t}\n\n\tplaces {")
				.replace("\thull 1\n", "\thull 1 with single\n");
		Snapshot snapshot = Snapshot.of(Map.of("boat.hull", options));
		SeriesInText found = CHECKER.texts().series(snapshot).get(0);
		assertEquals(List.of("flybridge", "single", "twin"), found.options().options().stream().sorted().toList());
		String changed = changed(snapshot, new Addition(Addition.Kind.HULL, found.outline().origin(), Statements.hull("2", List.of("twin", "flybridge"))));
		assertEquals(options.replace("\thull 1 with single\n", "\thull 1 with single\n\thull 2 with twin, flybridge\n"), changed);
		String none = options.replace("\n\thull 1 with single\n", "");
		Snapshot unsold = Snapshot.of(Map.of("boat.hull", none));
		assertTrue(changed(unsold, new Addition(Addition.Kind.HULL, CHECKER.texts().series(unsold).get(0).outline().origin(), Statements.hull("1", List.of("single"))))
				.endsWith("\t}\n\n\thull 1 with single\n}\n"));
	}

	@Test
	void aWaiverStandsBeforeTheHullsAndTheNextOneBelowIt() {
		String series = new StarterSeries("Skerry", "Day boat", "A", StarterSeries.Voltage.V12, List.of(StarterSeries.Device.DISPLAY)).text();
		Snapshot snapshot = Snapshot.of(Map.of("boat.hull", series));
		String first = changed(snapshot, new Addition(Addition.Kind.WAIVER, CHECKER.texts().series(snapshot).get(0).outline().origin(),
				Statements.waiver("cabling/drop-too-long", "instruments.display", "the \"console\" moves", Optional.of(LocalDate.of(2027, 3, 1)))));
		String statement = "\twaive cabling/drop-too-long on instruments.display because \"the \\\"console\\\" moves\" until 2027-03-01\n";
		assertEquals(series.replace("\thull 1\n", statement + "\n\thull 1\n"), first);
		Snapshot again = Snapshot.of(Map.of("boat.hull", first));
		String second = changed(again, new Addition(Addition.Kind.WAIVER, CHECKER.texts().series(again).get(0).outline().origin(),
				Statements.waiver("data/source-missing", "instruments.display", "later", Optional.empty())));
		assertEquals(first.replace(statement, statement + "\twaive data/source-missing on instruments.display because \"later\"\n"), second);
	}

	@Test
	void namesComeFromTitles() {
		assertEquals("DayBoat23", Names.from("Day boat 23"));
		assertEquals("Faro", Names.from("36 F\u00e5ro"));
		assertEquals("day-boat-23.hull", Names.file("Day boat 23"));
		assertEquals(Optional.empty(), Names.problem("The series", "Skerry"));
		for (String wrong : List.of("", "2boats", "day boat", "series", "caf\u00e9")) {
			assertFalse(Names.problem("The series", wrong).isEmpty(), wrong);
		}
	}

	private static String changed(Snapshot snapshot, Addition addition) {
		TextChange change = CHECKER.texts().rendered(snapshot, addition).orElseThrow();
		StringBuilder text = new StringBuilder(snapshot.text(change.file()).orElseThrow());
		return text.replace(change.offset(), change.offset() + change.length(), change.replacement()).toString();
	}
}
