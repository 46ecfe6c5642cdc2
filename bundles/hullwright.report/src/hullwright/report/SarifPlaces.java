/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import hullwright.network.Origin;
import hullwright.rules.report.SourceFile;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The files of a run of SARIF, and places in them.
 */
final class SarifPlaces {

	/** The name that code hosts know the root of a repository by. */
	static final String ROOT = "%SRCROOT%";

	private static final String BYTE_ORDER_MARK = "\uFEFF";

	/** What a path of a URI may hold as it is, beside letters and digits of ASCII (RFC 3986, section 3.3). */
	private static final String PATH_CHARACTERS = "-._~!$&'()*+,;=@/";

	private final ProjectSources sources;
	private final List<SourceFile> files;
	private final Map<String, Integer> numbers = new HashMap<>();

	SarifPlaces(ProjectSources sources, List<SourceFile> files) {
		this.sources = sources;
		this.files = files;
		files.forEach(file -> numbers.put(file.file(), numbers.size()));
	}

	/** The files that were read, with what they are and their hashes. */
	JsonArray artifacts() {
		JsonArray artifacts = new JsonArray();
		for (SourceFile file : files) {
			JsonObject artifact = new JsonObject();
			artifact.add("location", address(file.file()));
			JsonArray roles = new JsonArray();
			roles(file).forEach(roles::add);
			artifact.add("roles", roles);
			artifact.add("hashes", SarifText.property("sha-256", file.sha256()));
			if (!file.role().isEmpty()) {
				artifact.add("description", SarifText.message(file.role()));
			}
			artifacts.add(artifact);
		}
		return artifacts;
	}

	private static Set<String> roles(SourceFile file) {
		if (file.file().startsWith("standard:")) {
			return Set.of("toolSpecifiedConfiguration");
		}
		if (file.file().endsWith(".jar")) {
			return Set.of("extension");
		}
		Set<String> roles = new LinkedHashSet<>(List.of("analysisTarget"));
		if (file.role().contains("profile")) {
			roles.add("userSpecifiedConfiguration");
		}
		return roles;
	}

	/** The place of an element, and the element; empty if there is neither. */
	JsonObject location(Origin origin) {
		JsonObject location = new JsonObject();
		if (!origin.file().isEmpty()) {
			JsonObject physical = new JsonObject();
			JsonObject address = address(origin.file());
			if (numbers.containsKey(origin.file())) {
				address.addProperty("index", numbers.get(origin.file()));
			}
			physical.add("artifactLocation", address);
			if (origin.line() > 0) {
				physical.add("region", region(origin));
			}
			location.add("physicalLocation", physical);
		}
		// the element of a problem of a text is the file, which has been told
		if (!origin.element().equals(origin.file())) {
			JsonObject element = SarifText.property("name", origin.simpleName());
			element.addProperty("fullyQualifiedName", origin.element());
			location.add("logicalLocations", SarifText.list(element));
		}
		return location;
	}

	/** Lines and columns, and offset and length, must tell of the same characters; a byte order mark is none of them. */
	private JsonObject region(Origin origin) {
		JsonObject region = new JsonObject();
		region.addProperty("startLine", origin.line());
		String text = sources.texts().get(origin.file());
		int end = origin.offset() + origin.length();
		if (text == null || end > text.length()) {
			region.addProperty("startColumn", Math.max(1, origin.column()));
			return region;
		}
		int mark = text.startsWith(BYTE_ORDER_MARK) ? 1 : 0;
		int start = Math.max(mark, origin.offset());
		end = Math.max(start, end);
		int line = origin.line();
		int startOfLine = text.lastIndexOf('\n', start - 1) + 1;
		region.addProperty("startColumn", column(start, startOfLine, mark));
		for (int at = text.indexOf('\n', start); at >= 0 && at < end; at = text.indexOf('\n', at + 1)) {
			line++;
			startOfLine = at + 1;
		}
		region.addProperty("endLine", line);
		region.addProperty("endColumn", column(end, startOfLine, mark));
		region.addProperty("charOffset", start - mark);
		region.addProperty("charLength", end - start);
		return region;
	}

	private static int column(int offset, int startOfLine, int mark) {
		return offset - Math.max(startOfLine, mark) + 1;
	}

	private JsonObject address(String file) {
		JsonObject address = new JsonObject();
		if (ProjectReport.isOutside(file)) {
			int colon = file.indexOf(':') + 1;
			address.addProperty("uri", file.substring(0, colon) + encoded(file.substring(colon)));
			return address;
		}
		address.addProperty("uri", encoded(sources.pathOf(file)));
		address.addProperty("uriBaseId", ROOT);
		return address;
	}

	/** A path as a relative reference. A colon is encoded, since the first part would be a scheme. */
	private static String encoded(String path) {
		StringBuilder uri = new StringBuilder();
		for (byte each : path.getBytes(StandardCharsets.UTF_8)) {
			char character = (char) (each & 0xFF);
			boolean plain = character < 0x80 && (Character.isLetterOrDigit(character) || PATH_CHARACTERS.indexOf(character) >= 0);
			uri.append(plain ? String.valueOf(character) : "%%%02X".formatted((int) character));
		}
		return uri.toString();
	}
}
