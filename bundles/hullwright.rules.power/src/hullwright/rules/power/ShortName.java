/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.network.Origin;

/**
 * What people call a thing: the last part of its qualified name; a piece of a drop that has no name by what it leads to.
 */
final class ShortName {

	private ShortName() {
	}

	static String of(String qualified) {
		String name = Origin.nowhere(qualified).simpleName();
		int parent = qualified.lastIndexOf('.');
		return name.startsWith("leg-") && parent > 0 ? "the cable of " + of(qualified.substring(0, parent)) : name;
	}
}
