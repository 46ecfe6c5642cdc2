/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report;

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

	/** The path of a file of the project as the reader would name it. */
	String pathOf(String file) {
		return project.isEmpty() ? file : project + "/" + file;
	}
}
