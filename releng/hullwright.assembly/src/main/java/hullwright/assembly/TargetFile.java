/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.assembly;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/**
 * The artifacts that the target file pins.
 */
public final class TargetFile {

	private static final Pattern NAME_IN_INSTRUCTIONS = Pattern.compile("(?m)^Bundle-SymbolicName:\\s*(\\S+)");

	private final Map<Artifact, Optional<String>> wrappedNames;

	private TargetFile(Map<Artifact, Optional<String>> wrappedNames) {
		this.wrappedNames = wrappedNames;
	}

	/** Reads the target file of a source tree. */
	public static TargetFile of(Path root) throws IOException {
		Path file = root.resolve("releng/target-platform/hullwright.target");
		Map<Artifact, Optional<String>> wrappedNames = new LinkedHashMap<>();
		for (Element location : XmlFile.all(XmlFile.read(file), "location")) {
			Optional<String> name = XmlFile.text(location, "instructions").map(TargetFile::nameIn);
			for (Element dependency : XmlFile.all(location, "dependency")) {
				Artifact artifact = XmlFile.artifact(dependency)
						.orElseThrow(() -> new IOException(file + " has a dependency without coordinates"));
				// one location may wrap several jars, each named after its artifact
				wrappedNames.put(artifact, name.map(each -> each.replace("${mvnArtifactId}", artifact.artifactId())));
			}
		}
		return new TargetFile(wrappedNames);
	}

	/** All artifacts, in the order of the file. */
	public Set<Artifact> artifacts() {
		return wrappedNames.keySet();
	}

	/** The symbolic name that the target gives to a jar which has none of its own. */
	Optional<String> wrappedName(Artifact artifact) {
		return wrappedNames.get(artifact);
	}

	private static String nameIn(String instructions) {
		Matcher name = NAME_IN_INSTRUCTIONS.matcher(instructions);
		return name.find() ? name.group(1) : null;
	}
}
