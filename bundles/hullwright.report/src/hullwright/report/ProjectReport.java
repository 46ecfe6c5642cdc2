/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

import hullwright.network.Origin;
import hullwright.rules.report.CheckReport;

/**
 * The report on one project, with the name that the reader knows the project by.
 *
 * @param project the folder of the project as the reader named it, without a '/' at its end; empty for the current folder
 * @param report what the check found there
 */
public record ProjectReport(String project, CheckReport report) {

	/** How the project is called in a report. */
	String name() {
		return project.isEmpty() ? "." : project;
	}

	/** The path of a file of the project as the reader would name it; what is in no project keeps its name. */
	String pathOf(String file) {
		return project.isEmpty() || isOutside(file) ? file : project + "/" + file;
	}

	/** A place as the reader would name it, with line and column where it is in a text; empty if it is in no file. */
	String placeOf(Origin origin) {
		return origin.file().isEmpty() ? "" : pathOf(origin.file()) + (origin.line() == 0 ? "" : ":" + origin.line() + ":" + origin.column());
	}

	/** Whether a name is that of a built-in catalog, or of a file of the user's rather than the project's. */
	static boolean isOutside(String file) {
		return file.startsWith("standard:") || file.startsWith("user:");
	}
}
