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
import hullwright.analysis.Figures;
import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Snapshot;
import hullwright.check.WantedBoats;
import hullwright.report.figures.FiguresJson;
import hullwright.report.figures.ProjectFigures;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Holds the JSON of computed figures against the published schema, with a validator that is not ours (networknt
 * json-schema-validator, JSON Schema 2020-12).
 */
class JsonFiguresTest {

	private static final Path EXAMPLES = Path.of("..", "hullwright.examples", "examples");

	private static final Checker CHECKER = Checker.create();

	private static final JsonSchema SCHEMA = schema();

	private static JsonSchema schema() {
		try {
			String text = Files.readString(Path.of("..", "hullwright.report", "schema", "figures-1.schema.json"));
			return JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(text);
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	private static Set<String> violations(String json) {
		return SCHEMA.validate(json, InputFormat.JSON).stream().map(Object::toString).collect(Collectors.toSet());
	}

	private static String json(Snapshot snapshot, WantedBoats wanted) {
		BoatsRead read = CHECKER.boats(new CheckRequest(snapshot, Set.of(), wanted, LocalDate.EPOCH));
		List<Figures> computed = read.boats().stream().map(Figures::new).toList();
		return FiguresJson.of(List.of(new ProjectFigures("boat", computed, read.problems(), read.gaps(), false)));
	}

	@ParameterizedTest
	@ValueSource(strings = { "first-power-up", "day-boat", "harbour-pilot", "twin-cruiser", "motor-yacht", "faulty" })
	void figuresOfTheExamplesFollowTheSchema(String example) throws IOException {
		String json = json(Snapshot.ofFolder(EXAMPLES.resolve(example)), new WantedBoats.Plainest());
		assertEquals(Set.of(), violations(json));
		assertFalse(json.contains("null"), "nothing is null");
	}

	@ParameterizedTest
	@ValueSource(strings = { "", "series", "series X { network n { backbone of light { cable 6 } } }",
			"import \"standard:parts\" series X { network n { backbone of light { tee t : block4 } drop t.1 to d : instrumentDisplay } }",
			"import \"standard:parts\" series X { supply s { 12 V } network n { backbone of light { tee t : block4 } feed t.2 from s "
					+ "drop t.1 to d : instrumentDisplay } }" })
	void figuresOfPoorTextsFollowTheSchema(String text) {
		String json = json(Snapshot.of(Map.of("poor.hull", text)), new WantedBoats.Plainest());
		assertEquals(Set.of(), violations(json), json);
	}

	@Test
	void theSchemaRefusesWhatIsNone() throws IOException {
		String json = json(Snapshot.ofFolder(EXAMPLES.resolve("first-power-up")), new WantedBoats.Plainest());
		assertFalse(violations(json.replace("\"voltage_V\"", "\"voltage_in_V\"")).isEmpty());
		assertFalse(violations(json.replace("\"version\": 1", "\"version\": 2")).isEmpty());
		assertFalse(violations(json.replace("\"fed\": true", "\"fed\": \"yes\"")).isEmpty());
	}
}
