/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.BoatSeries;
import hullwright.resolve.OptionSpace;

/**
 * A series as its text describes it.
 *
 * @param file the file that it stands in, relative to the project
 * @param outline what it offers and sells
 * @param options its options and which of them go together
 */
public record SeriesInText(String file, BoatSeries outline, OptionSpace options) {
}
