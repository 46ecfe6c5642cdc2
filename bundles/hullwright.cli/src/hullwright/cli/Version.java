/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.jar.Manifest;
import picocli.CommandLine.IVersionProvider;

/**
 * The version of the program, as its bundle states it.
 */
final class Version implements IVersionProvider {

	@Override
	public String[] getVersion() throws IOException {
		return new String[] { "hullwright " + ofBundle() };
	}

	/** The three numbers of the version, as semantic versioning has them. */
	static String number() {
		try {
			String[] parts = ofBundle().split("\\.");
			return parts.length < 3 ? "0.0.0" : String.join(".", parts[0], parts[1], parts[2]);
		} catch (IOException e) {
			return "0.0.0";
		}
	}

	private static String ofBundle() throws IOException {
		URL own = Version.class.getResource("Version.class");
		String path = own.toString();
		URL manifest = new URL(path.substring(0, path.length() - "hullwright/cli/Version.class".length()) + "META-INF/MANIFEST.MF");
		try (InputStream content = manifest.openStream()) {
			return String.valueOf(new Manifest(content).getMainAttributes().getValue("Bundle-Version"));
		}
	}
}
