/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import hullwright.check.baseline.BaselineFile;
import hullwright.check.baseline.UnusableBaseline;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The baselines in a folder that name a thing. They accept findings by the names of things and do not follow a rename, since
 * who accepts a finding should see what it is about.
 */
final class AcceptedNames {

	/** Larger files are no baselines. */
	private static final long LARGEST = 20_000_000;
	private static final int DEEPEST_FOLDER = 3;

	private AcceptedNames() {
	}

	/** A sentence for each baseline below the folder that accepts findings about this name. */
	static List<String> warnings(Path folder, String name) {
		List<String> warnings = new ArrayList<>();
		try (Stream<Path> files = Files.find(folder, DEEPEST_FOLDER, (file, attributes) -> attributes.isRegularFile()
				&& file.getFileName().toString().endsWith(".json") && attributes.size() < LARGEST)) {
			files.sorted().forEach(file -> {
				long naming = naming(file, name);
				if (naming > 0) {
					warnings.add("The baseline " + folder.relativize(file) + " accepts " + (naming == 1 ? "a finding" : naming + " findings")
							+ " about '" + name + "' and does not follow: write it anew after this");
				}
			});
		} catch (IOException | RuntimeException e) {
			warnings.add("The baselines of this project could not be looked at: " + e.getMessage());
		}
		return warnings;
	}

	private static long naming(Path file, String name) {
		Pattern word = Pattern.compile("(^|[.-])" + Pattern.quote(name) + "([.-]|$)");
		try {
			return BaselineFile.read(file.toString(), Files.readAllBytes(file)).elements().stream()
					.filter(element -> word.matcher(element).find()).count();
		} catch (UnusableBaseline | IOException e) {
			// some other JSON
			return 0;
		}
	}
}
