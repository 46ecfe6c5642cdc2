/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import hullwright.network.power.Converter;

/**
 * A converter: the source at its output, and the load of constant power at its input.
 *
 * @param converter the converter
 * @param source the number of its output among the sources of the circuit
 * @param load the number of its input among the loads, -1 if nothing is said of what feeds it
 */
record ConverterInCircuit(Converter converter, int source, int load) {
}
