/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.testkit;

import hullwright.report.OccurrenceText;
import hullwright.rules.Finding;
import hullwright.rules.report.ReportedFinding;

/**
 * A finding that a marked text announces, or one that a check made, in the form in which the two are compared.
 *
 * @param line the line of the unmarked text, counted from 1
 * @param column the column, counted from 1
 * @param length how many characters are marked
 * @param text severity, rule and message, and in brackets the boats if it is not on all: {@code error cabling/drop-too-long:
 *     the drop ... [when flybridge]}
 */
public record Expectation(int line, int column, int length, String text) {

	/** A finding in this form. */
	public static Expectation of(ReportedFinding reported) {
		Finding finding = reported.finding();
		String boats = OccurrenceText.of(reported.occurrence());
		return new Expectation(finding.origin().line(), finding.origin().column(), finding.origin().length(), finding.severity().word() + " "
				+ finding.rule() + ": " + finding.message() + (boats.isEmpty() ? "" : " [" + boats + "]"));
	}

	@Override
	public String toString() {
		return line + ":" + column + "+" + length + " " + text;
	}
}
