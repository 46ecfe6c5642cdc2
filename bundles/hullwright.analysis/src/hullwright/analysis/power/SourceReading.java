/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.Optional;

import hullwright.quantity.Current;
import hullwright.quantity.Power;
import hullwright.quantity.Voltage;

/**
 * What a bank, a converter or a supply with a bank of its own gives.
 *
 * @param source its qualified name
 * @param voltage its open voltage
 * @param current what it gives; negative if another source drives a current into it
 * @param input for a converter with something behind it, what it takes there
 */
public record SourceReading(String source, Voltage voltage, Current current, Optional<ConverterInput> input) {

	/**
	 * The input of a converter.
	 *
	 * @param voltage the voltage at its input
	 * @param power what it takes, its losses included
	 */
	public record ConverterInput(Voltage voltage, Power power) {
	}
}
