/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.power;

import java.util.Optional;

import hullwright.network.Origin;
import hullwright.quantity.Resistance;

/**
 * A bank of batteries.
 *
 * @param name the qualified name
 * @param title what people call it
 * @param voltages what voltage it gives
 * @param startsEngines whether engines are started from it
 * @param resistance its internal resistance, if the text says
 * @param origin its place in the text
 */
public record Bank(String name, String title, Voltages voltages, boolean startsEngines, Optional<Resistance> resistance,
		Origin origin) {
}
