/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

/**
 * One resistor of a boat's circuit.
 *
 * @param name the qualified name of what it belongs to
 * @param ohms its value at 20 °C
 * @param copper whether it follows the temperature of copper
 */
record Resistor(String name, double ohms, boolean copper) {
}
