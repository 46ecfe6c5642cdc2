/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.osgi.framework.Version;

/**
 * A jar with rules of a house.
 *
 * @param file where it was found: relative to the project, or the whole path where it belongs to the user
 * @param name its symbolic name, or that of the file if it has none
 * @param version its version, empty if it has none
 * @param sha256 the SHA-256 of its bytes, in hexadecimal
 * @param rules the classes that it contributes as rules
 * @param refusal why it cannot be used, if so
 * @param bytes the jar itself, so that what is run is what was looked at
 */
public record HousePlugin(String file, String name, String version, String sha256, List<String> rules, Optional<String> refusal, byte[] bytes) {

	public HousePlugin {
		rules = List.copyOf(rules);
	}

	/** The same, with what its manifest calls it. */
	HousePlugin named(String symbolicName, Version number) {
		return new HousePlugin(file, symbolicName, number.toString(), sha256, rules, refusal, bytes);
	}

	/** The same, with the classes that it contributes as rules. */
	HousePlugin contributing(List<String> classes) {
		return new HousePlugin(file, name, version, sha256, classes, refusal, bytes);
	}

	/** The same, but not to be used. */
	public HousePlugin refused(String why) {
		return new HousePlugin(file, name, version, sha256, rules, Optional.of(why), bytes);
	}

	/** The plugin that a jar is, refused if it is none or none for this version. Nothing of it runs. */
	public static HousePlugin of(PluginFile jar) {
		return PluginJar.plugin(jar);
	}

	/** Whether it belongs to a project and not to a user. */
	public boolean isOfProject() {
		return !Path.of(file).isAbsolute();
	}

	/** What reports call its jar: neither they nor their readers care where on this machine a user keeps it. */
	public String sourceName() {
		return isOfProject() ? file : "user:" + PluginFile.FOLDER + file.substring(file.lastIndexOf('/'));
	}

	/** Name and version, for people. */
	public String title() {
		return version.isEmpty() ? name : name + " " + version;
	}
}
