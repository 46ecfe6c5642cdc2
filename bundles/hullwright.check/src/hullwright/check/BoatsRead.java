/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Boat;
import hullwright.rules.Finding;
import java.util.List;

/**
 * The boats of a project, for those who compute or draw and do not check.
 *
 * @param boats the boats, by series in the order of the files; combinations of options before sold hulls
 * @param problems the problems of the texts
 * @param gaps what could not be read, in words
 */
public record BoatsRead(List<Boat> boats, List<Finding> problems, List<String> gaps) {

	public BoatsRead {
		boats = List.copyOf(boats);
		problems = List.copyOf(problems);
		gaps = List.copyOf(gaps);
	}
}
