/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.layout;

import java.util.List;

import hullwright.network.Origin;
import hullwright.quantity.Length;

/**
 * A way that cables take between two places.
 *
 * @param name its name
 * @param title what people call it
 * @param from the place where it starts
 * @param to the place where it ends
 * @param length how long it is
 * @param through the bulkheads it goes through
 * @param origin its place in the text
 */
public record Route(String name, String title, String from, String to, Length length, List<String> through, Origin origin) {

	public Route {
		through = List.copyOf(through);
	}
}
