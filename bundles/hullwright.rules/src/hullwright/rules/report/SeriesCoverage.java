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
 * @param devices the number of devices that its text names, whichever boats have them
 * @param combinations how many combinations of options were checked
 * @param allCombinations whether these are all that can be ordered
 * @param hulls how many sold hulls were checked
 * @param allHulls whether these are all
 * @param origin the series in the text
 */
public record SeriesCoverage(String series, int devices, int combinations, boolean allCombinations, int hulls, boolean allHulls, Origin origin) {
}
