/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.starter;

/**
 * A profile to begin a project with. It keeps the standard limits until somebody writes others.
 *
 * @param name its name
 * @param title what people call it, or empty
 */
public record StarterProfile(String name, String title) {

	/** The text of its file. */
	public String text() {
		return """
				// What this house allows. A project has exactly one profile.

				profile %s%s from standard {
					// The standard limits hold until others stand here, such as:
					// cabling/drop-too-long { advice above 5 m; error above 6 m }
				}
				""".formatted(name, Names.title(title));
	}
}
