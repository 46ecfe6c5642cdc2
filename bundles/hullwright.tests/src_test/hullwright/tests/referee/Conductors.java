/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.referee;

/**
 * The nodes of the two conductors at one place: NET-S, the supply, and NET-C, its return.
 */
record Conductors(String supply, String common) {

	static Conductors at(String place) {
		return new Conductors(place + "_s", place + "_c");
	}
}
