/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.report;

import hullwright.network.Origin;

/**
 * How much of a series was checked.
 *
 * @param series the name of the series
 * @param devices the number of devices that its text names
 * @param checked how many boats were checked, sold hulls included
 * @param total how many boats there are to check; with {@code more} at least so many
 * @param more whether there are more boats than were counted
 * @param origin the series in the text
 */
public record SeriesCoverage(String series, int devices, int checked, int total, boolean more, Origin origin) {
}
