/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;

/**
 * A backbone: everything that lies in it, in physical order from one end to the other.
 *
 * @param name the qualified name
 * @param elements cables and parts; a removed element has closed the gap between its neighbours
 * @param origin its place in the text
 */
public record Backbone(String name, List<Element> elements, Origin origin) {

	public Backbone {
		elements = List.copyOf(elements);
	}
}
