/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.report;

import hullwright.rules.Finding;

/**
 * A finding and the boats it occurs on. Where its values differ from boat to boat, the finding shows the worst.
 *
 * @param finding the finding
 * @param occurrence the boats
 */
public record ReportedFinding(Finding finding, Occurrence occurrence) {
}
