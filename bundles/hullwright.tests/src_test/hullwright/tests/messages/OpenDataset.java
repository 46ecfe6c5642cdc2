/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.messages;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * The CANboat PGN database (npm package @canboat/ts-pgns, Apache-2.0), which {@code releng/open-data} pins: what it says about
 * PGNs that belong to no maker.
 */
final class OpenDataset {

	private static final Path HOME = Path.of("..", "..", "releng", "open-data");
	private static final Path FILE = HOME.resolve(Path.of("node_modules", "@canboat", "ts-pgns", "canboat.json"));

	private final JsonNode content;
	private final Map<Integer, List<JsonNode>> entries;

	private OpenDataset(JsonNode content) {
		this.content = content;
		entries = stream(content.get("PGNs"))
				.filter(entry -> !entry.path("Fallback").asBoolean() && !isProprietary(entry.get("PGN").asInt()))
				.collect(Collectors.groupingBy(entry -> entry.get("PGN").asInt(), TreeMap::new, Collectors.toList()));
	}

	/** Reads the dataset. Where it was not fetched, the test is skipped, or fails where everything has to run. */
	static OpenDataset read() throws IOException {
		if (!Files.exists(FILE)) {
			String advice = "the open dataset is not there; fetch it: (cd releng/open-data && npm ci --ignore-scripts)";
			if (System.getenv("CI") != null) {
				fail(advice);
			}
			abort(advice);
		}
		return new OpenDataset(new ObjectMapper().readTree(FILE.toFile()));
	}

	/** The packages and versions that the lock holds, which is there even if nothing was fetched. */
	static Map<String, String> lockedVersions() throws IOException {
		Map<String, String> versions = new TreeMap<>();
		JsonNode lock = new ObjectMapper().readTree(HOME.resolve("package-lock.json").toFile());
		lock.get("packages").properties().forEach(entry -> {
			if (!entry.getKey().isEmpty()) {
				versions.put(entry.getKey().substring("node_modules/".length()), entry.getValue().get("version").asText());
			}
		});
		return versions;
	}

	/** The ranges that makers use for themselves, from the dataset's own entries for ranges. */
	static boolean isProprietary(int pgn) {
		return pgn == 61184 || pgn == 126720 || pgn >= 65280 && pgn <= 65535 || pgn >= 130816 && pgn <= 131071;
	}

	Set<Integer> pgns() {
		return entries.keySet();
	}

	/** What the dataset says about a PGN, in the words of the comparison. */
	PgnFacts facts(int pgn) {
		List<JsonNode> all = entries.get(pgn);
		JsonNode first = all.get(0);
		Set<String> keys = new TreeSet<>();
		for (JsonNode entry : all) {
			stream(entry.get("Fields")).filter(field -> field.path("PartOfPrimaryKey").asBoolean())
					.forEach(field -> keys.add(KeyNames.ofField(field.get("Id").asText())));
		}
		return new PgnFacts(first.get("Type").asText().toLowerCase(Locale.ROOT), length(all), interval(first),
				first.has("Priority") ? first.get("Priority").asText() : PgnFacts.SILENT, keys);
	}

	private static String length(Collection<JsonNode> all) {
		Set<Integer> fixed = all.stream().filter(entry -> entry.has("Length")).map(entry -> entry.get("Length").asInt()).collect(Collectors.toSet());
		int least = all.stream().mapToInt(entry -> entry.path("MinLength").asInt(Integer.MAX_VALUE)).min().orElseThrow();
		if (fixed.size() == 1 && least == Integer.MAX_VALUE) {
			return PgnFacts.fixedLength(fixed.iterator().next());
		}
		return PgnFacts.variableLength(least);
	}

	private static String interval(JsonNode entry) {
		if (entry.has("TransmissionInterval")) {
			return PgnFacts.every(entry.get("TransmissionInterval").asLong());
		}
		return entry.path("TransmissionIrregular").asBoolean() ? PgnFacts.ON_EVENT : PgnFacts.SILENT;
	}

	/** What the dataset calls its messages, as {@link #lettersOf letters}. */
	Set<String> descriptions() {
		return stream(content.get("PGNs")).map(entry -> lettersOf(entry.get("Description").asText())).collect(Collectors.toSet());
	}

	/** A text without what makes no difference to a reader: its letters and digits, in lower case. */
	static String lettersOf(String text) {
		return text.replaceAll("[^\\p{L}\\p{N}]", "").toLowerCase(Locale.ROOT);
	}

	/** The makers of devices that the dataset knows. */
	List<String> makers() {
		return stream(content.get("LookupEnumerations")).filter(lookup -> lookup.get("Name").asText().equals("MANUFACTURER_CODE"))
				.flatMap(lookup -> stream(lookup.get("EnumValues"))).map(value -> value.get("Name").asText()).toList();
	}

	private static Stream<JsonNode> stream(JsonNode array) {
		return StreamSupport.stream(array.spliterator(), false);
	}
}
