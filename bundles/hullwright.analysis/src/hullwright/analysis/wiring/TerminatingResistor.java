/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import java.util.Optional;

import hullwright.quantity.Resistance;

/**
 * A resistor across the signal pair, wherever it is built in.
 *
 * @param resistance its value, if the catalog says
 * @param point the point
 * @param network the number of the network within the boat
 * @param part the qualified name of the terminator, device or cord
 */
public record TerminatingResistor(Optional<Resistance> resistance, int point, int network, String part) {
}
