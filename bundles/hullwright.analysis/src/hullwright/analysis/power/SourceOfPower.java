/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import hullwright.network.power.Voltages;

/**
 * One ideal voltage of a boat's circuit: a bank, a converter's output, or a supply that is a bank of its own.
 *
 * @param name its qualified name
 * @param voltages what it gives
 * @param number its number in the circuit
 */
record SourceOfPower(String name, Voltages voltages, int number) {
}
