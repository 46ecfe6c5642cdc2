/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

import java.util.List;

/**
 * A field of a message that tells two sources of it apart.
 *
 * @param name the field
 * @param values the values that devices state; none where any number can stand
 */
public record KeyField(String name, List<String> values) {

	public KeyField {
		values = List.copyOf(values);
	}
}
