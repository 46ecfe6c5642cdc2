/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.layout;

import hullwright.network.Origin;

/**
 * A wall between two places.
 *
 * @param name its name
 * @param title what people call it
 * @param between the place on the one side
 * @param and the place on the other
 * @param watertight whether it must stay watertight
 * @param origin its place in the text
 */
public record Bulkhead(String name, String title, String between, String and, boolean watertight, Origin origin) {
}
