/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.baseline;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.MalformedJsonException;
import hullwright.rules.Severity;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Baselines as files: JSON, one entry for each accepted finding, sorted, so that two of them compare line by line. What is not
 * understood is refused; a baseline is never taken to be empty.
 */
public final class BaselineFile {

	/** The version of the format. */
	private static final int VERSION = 1;

	private static final String FORMAT = "hullwright-baseline";

	private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

	/** Digits of a distance that are kept. */
	private static final MathContext DIGITS = new MathContext(9);

	private static final Pattern PLACE = Pattern.compile("at line (\\d+) column (\\d+)");

	private BaselineFile() {
	}

	/** Writes a baseline; of several findings about one matter all are kept. */
	public static String write(Collection<AcceptedFinding> findings, double tolerance) {
		JsonObject document = new JsonObject();
		document.addProperty("format", FORMAT);
		document.addProperty("version", VERSION);
		document.addProperty("tolerance_share", tolerance);
		JsonArray accepted = new JsonArray();
		for (AcceptedFinding each : new TreeSet<>(findings)) {
			JsonObject json = new JsonObject();
			json.addProperty("rule", each.rule());
			json.addProperty("element", each.element());
			json.addProperty("key", each.key());
			json.addProperty("severity", each.severity().word());
			json.addProperty("beyondLimit_share", new BigDecimal(each.beyondLimit()).round(DIGITS).stripTrailingZeros());
			accepted.add(json);
		}
		document.add("accepted", accepted);
		return GSON.toJson(document) + "\n";
	}

	/**
	 * Reads a baseline.
	 *
	 * @param file its name, for people
	 * @throws UnusableBaseline if it is none, is damaged, or is of a newer version
	 */
	public static Baseline read(String file, byte[] bytes) throws UnusableBaseline {
		JsonFields document = new JsonFields(file, "", parse(file, text(file, bytes)));
		if (!FORMAT.equals(document.text("format"))) {
			throw document.problem("'format' is '" + document.text("format") + "'; a baseline has '" + FORMAT + "'");
		}
		if (document.number("version") != VERSION) {
			throw document.problem("it is of version " + document.element("version") + "; this program understands version " + VERSION);
		}
		document.only(Set.of("format", "version", "tolerance_share", "accepted"));
		double tolerance = document.number("tolerance_share");
		if (!(tolerance >= 0 && tolerance <= 1)) {
			throw document.problem("'tolerance_share' is " + tolerance + "; it is from 0 to 1");
		}
		SortedSet<AcceptedFinding> accepted = new TreeSet<>();
		List<JsonElement> entries = document.list("accepted");
		for (int i = 0; i < entries.size(); i++) {
			AcceptedFinding entry = accepted(new JsonFields(file, "accepted[" + i + "]", entries.get(i)));
			if (!accepted.add(entry)) {
				throw document.problem("accepted[" + i + "] is there twice");
			}
		}
		return new Baseline(file, sha256(bytes), tolerance, accepted);
	}

	private static AcceptedFinding accepted(JsonFields entry) throws UnusableBaseline {
		entry.only(Set.of("rule", "element", "key", "severity", "beyondLimit_share"));
		String word = entry.text("severity");
		Severity severity = Arrays.stream(Severity.values()).filter(each -> each.word().equals(word)).findFirst()
				.orElseThrow(() -> entry.problem("'severity' is '" + word + "'; it is advice, warning or error"));
		double beyond = entry.number("beyondLimit_share");
		if (!(beyond >= 0 && Double.isFinite(beyond))) {
			throw entry.problem("'beyondLimit_share' is " + beyond + "; it is a number from 0");
		}
		String rule = entry.text("rule");
		if (!rule.toLowerCase(Locale.ROOT).equals(rule) || !rule.contains("/")) {
			throw entry.problem("'rule' is '" + rule + "', which is no id of a rule");
		}
		return new AcceptedFinding(rule, entry.text("element"), entry.text("key"), severity, beyond);
	}

	private static String text(String file, byte[] bytes) throws UnusableBaseline {
		try {
			return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
		} catch (CharacterCodingException e) {
			throw new UnusableBaseline(file + " is no baseline: it is no text in UTF-8");
		}
	}

	private static JsonElement parse(String file, String text) throws UnusableBaseline {
		try (JsonReader reader = new JsonReader(new StringReader(text))) {
			JsonElement document = GSON.getAdapter(JsonElement.class).read(reader);
			if (reader.peek() != JsonToken.END_DOCUMENT) {
				throw new MalformedJsonException("more than one value");
			}
			return document;
		} catch (IOException | JsonParseException | IllegalStateException e) {
			Matcher place = PLACE.matcher(String.valueOf(e.getMessage()));
			throw new UnusableBaseline(file + (place.find() ? ":" + place.group(1) + ":" + place.group(2) : "") + " is no baseline: it is not JSON");
		}
	}

	private static String sha256(byte[] bytes) {
		try {
			return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
		} catch (NoSuchAlgorithmException e) {
			throw new IllegalStateException("every Java has SHA-256", e);
		}
	}

	/** The fields of a JSON object, each of which must be what it should be. */
	private record JsonFields(String file, String path, JsonElement json) {

		JsonElement element(String name) throws UnusableBaseline {
			if (json == null || !json.isJsonObject()) {
				throw problem("an object is expected");
			}
			JsonElement found = json.getAsJsonObject().get(name);
			if (found == null) {
				throw problem("'" + name + "' is missing");
			}
			return found;
		}

		String text(String name) throws UnusableBaseline {
			JsonElement found = element(name);
			if (!found.isJsonPrimitive() || !found.getAsJsonPrimitive().isString()) {
				throw problem("'" + name + "' is no text: " + found);
			}
			return found.getAsString();
		}

		double number(String name) throws UnusableBaseline {
			JsonElement found = element(name);
			if (!found.isJsonPrimitive() || !found.getAsJsonPrimitive().isNumber()) {
				throw problem("'" + name + "' is no number: " + found);
			}
			return found.getAsDouble();
		}

		List<JsonElement> list(String name) throws UnusableBaseline {
			JsonElement found = element(name);
			if (!found.isJsonArray()) {
				throw problem("'" + name + "' is no list");
			}
			List<JsonElement> list = new ArrayList<>();
			found.getAsJsonArray().forEach(list::add);
			return list;
		}

		void only(Set<String> names) throws UnusableBaseline {
			if (json == null || !json.isJsonObject()) {
				throw problem("an object is expected");
			}
			for (String name : json.getAsJsonObject().keySet()) {
				if (!names.contains(name)) {
					throw problem("'" + name + "' is unknown; there are " + String.join(", ", new TreeSet<>(names)));
				}
			}
		}

		UnusableBaseline problem(String what) {
			return new UnusableBaseline(file + " is no baseline" + (path.isEmpty() ? "" : ", at " + path) + ": " + what);
		}
	}
}
