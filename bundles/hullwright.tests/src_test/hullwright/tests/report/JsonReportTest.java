/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.quantity.BitRate;
import hullwright.quantity.CrossSection;
import hullwright.quantity.Current;
import hullwright.quantity.DelayPerLength;
import hullwright.quantity.Dimension;
import hullwright.quantity.Duration;
import hullwright.quantity.Length;
import hullwright.quantity.Power;
import hullwright.quantity.Quantity;
import hullwright.quantity.Ratio;
import hullwright.quantity.Resistance;
import hullwright.quantity.ResistancePerLength;
import hullwright.quantity.Voltage;
import hullwright.report.JsonReport;
import hullwright.report.ProjectReport;
import hullwright.rules.Finding;
import hullwright.rules.report.CheckReport;
import hullwright.rules.report.ReportedFinding;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Holds the JSON of real checks against the published schema, with a validator that is not ours (networknt
 * json-schema-validator, JSON Schema 2020-12).
 */
class JsonReportTest {

	private static final Path EXAMPLES = Path.of("..", "hullwright.examples", "examples");
	private static final LocalDate DAY = LocalDate.of(2030, 1, 1);

	private final Checker checker = Checker.create();
	private final JsonSchema schema = schema();

	private static JsonSchema schema() {
		try {
			String text = Files.readString(Path.of("..", "hullwright.report", "schema", "report-1.schema.json"));
			return JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(text);
		} catch (IOException e) {
			throw new java.io.UncheckedIOException(e);
		}
	}

	private Set<String> violations(String json) {
		return schema.validate(json, InputFormat.JSON).stream().map(Object::toString).collect(Collectors.toSet());
	}

	private String json(Snapshot snapshot) {
		return JsonReport.of(List.of(new ProjectReport("boat", checker.check(CheckRequest.ofAll(snapshot, DAY)))));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "harbour-pilot", "faulty" })
	void reportsOnTheExamplesFollowTheSchema(String example) throws IOException {
		assertEquals(Set.of(), violations(json(Snapshot.ofFolder(EXAMPLES.resolve(example)))));
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "series", "series X { network n { backbone of light { cable 6 } } }", "profile P from other { a/b-c off }", "\u0000" })
	void reportsOnBrokenTextFollowTheSchema(String text) {
		String json = json(Snapshot.of(Map.of("broken.hull", text)));
		assertEquals(Set.of(), violations(json), json);
	}

	@Test
	void everyKindOfQuantityIsWrittenWithItsUnit() throws IOException {
		Map<String, Object> values = new LinkedHashMap<>();
		Map<Dimension, Quantity> kinds = Map.ofEntries(Map.entry(Dimension.LENGTH, new Length(6)), Map.entry(Dimension.VOLTAGE, new Voltage(12)),
				Map.entry(Dimension.CURRENT, new Current(3)), Map.entry(Dimension.POWER, new Power(40)),
				Map.entry(Dimension.RESISTANCE, new Resistance(120)), Map.entry(Dimension.RESISTANCE_PER_LENGTH, new ResistancePerLength(0.057)),
				Map.entry(Dimension.DELAY_PER_LENGTH, new DelayPerLength(5e-9)), Map.entry(Dimension.DURATION, new Duration(0.25)),
				Map.entry(Dimension.BIT_RATE, new BitRate(4800)), Map.entry(Dimension.RATIO, new Ratio(0.85)),
				Map.entry(Dimension.CONDUCTOR_SIZE, new CrossSection(1.5)));
		for (Dimension kind : Dimension.values()) {
			values.put("limit" + (char) ('A' + kind.ordinal()), kinds.get(kind));
		}
		CheckReport checked = checker.check(CheckRequest.ofAll(Snapshot.ofFolder(EXAMPLES.resolve("faulty")), DAY));
		Finding first = checked.findings().get(0).finding();
		Finding withAll = new Finding(first.rule(), first.severity(), first.origin(), first.key(), first.template(), values, first.source(), List.of(), Set.of());
		CheckReport report = new CheckReport(checked.asOf(), List.of(new ReportedFinding(withAll, checked.findings().get(0).occurrence())),
				checked.setAside(), checked.gaps(), checked.rules(), checked.series(), checked.files(), checked.baseline());

		String json = JsonReport.of(List.of(new ProjectReport("boat", report)));

		assertEquals(Set.of(), violations(json), json);
	}

	@Test
	void theSchemaRefusesWhatIsNoReport() throws IOException {
		String json = json(Snapshot.ofFolder(EXAMPLES.resolve("faulty")));
		assertFalse(violations(json.replace("\"severity\": \"error\"", "\"severity\": \"fatal\"")).isEmpty());
		assertFalse(violations(json.replace("\"length_m\"", "\"length\\u0020in feet\"")).isEmpty());
		assertFalse(violations(json.replace("\"version\": 1", "\"version\": 2")).isEmpty());
	}

	@Test
	void twoRunsPrintTheSameBytes() throws IOException {
		Snapshot snapshot = Snapshot.ofFolder(EXAMPLES.resolve("faulty"));
		assertEquals(json(snapshot), json(snapshot));
	}
}
