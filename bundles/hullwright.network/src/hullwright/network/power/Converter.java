/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.power;

import java.util.Optional;

import hullwright.network.Origin;
import hullwright.quantity.Current;
import hullwright.quantity.Ratio;
import hullwright.quantity.Voltage;

/**
 * A converter from one voltage to another.
 *
 * @param name the qualified name
 * @param title what people call it
 * @param from the qualified name of what feeds it, if the text says
 * @param voltages what voltage it gives
 * @param isolated whether its output has no current path to its input
 * @param most the current it can give, if the text says
 * @param efficiency the power that it gives as a share of the power that it takes, above 0 and at most 1, if the text says
 * @param takesLowest the lowest voltage it works from, if the text says
 * @param takesHighest the highest voltage it bears, if the text says
 * @param origin its place in the text
 */
public record Converter(String name, String title, Optional<String> from, Voltages voltages, boolean isolated,
		Optional<Current> most, Optional<Ratio> efficiency, Optional<Voltage> takesLowest, Optional<Voltage> takesHighest, Origin origin) {
}
