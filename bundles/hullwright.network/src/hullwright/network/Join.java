/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;

/**
 * A cable from port to port, which closes a loop or joins two backbones. A mistake that can be said.
 *
 * @param name the qualified name
 * @param from where it starts
 * @param legs the cables and parts between
 * @param to where it ends
 * @param origin its place in the text
 */
public record Join(String name, PortRef from, List<Element> legs, PortRef to, Origin origin) {

	public Join {
		legs = List.copyOf(legs);
	}
}
