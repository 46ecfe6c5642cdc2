/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Makes text, JSON, SARIF, test results and Markdown of what a check found. The text of a finding is made here, at the edge, not before.
 */
package hullwright.report;
