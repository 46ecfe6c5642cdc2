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
import hullwright.report.PluginListing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Holds the JSON list of plugins against the published schema, with a validator that is not ours (networknt
 * json-schema-validator, JSON Schema 2020-12).
 */
class PluginListingTest {

	private static final String SUM = "0123456789abcdef".repeat(4);

	private static PluginListing.Plugin plugin(PluginListing.State state, Optional<String> refusal) {
		return new PluginListing.Plugin("yard.rules", "1.0.0", state, "rules/yard.jar", List.of("yard/no-spare-tee"), refusal, SUM);
	}

	private static Set<String> violations(PluginListing.Plugin... plugins) throws IOException {
		JsonSchema schema = JsonSchemaFactory.getInstance(VersionFlag.V202012)
				.getSchema(Files.readString(Path.of("..", "hullwright.report", "schema", "plugins-1.schema.json")));
		String json = PluginListing.json(List.of(new PluginListing("boats", List.of(plugins), "rules"), new PluginListing("", List.of(), "rules")));
		return schema.validate(json, InputFormat.JSON).stream().map(Object::toString).collect(Collectors.toSet());
	}

	@Test
	void everyStateKeepsTheSchema() throws IOException {
		assertEquals(Set.of(), violations(plugin(PluginListing.State.ON, Optional.empty()), plugin(PluginListing.State.NOT_TRUSTED, Optional.empty()),
				plugin(PluginListing.State.REFUSED, Optional.of("it is no jar"))));
	}

	@Test
	void theSchemaWantsToKnowWhyAPluginIsRefused() throws IOException {
		assertFalse(violations(plugin(PluginListing.State.REFUSED, Optional.empty())).isEmpty());
	}
}
