/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.network.Boat;
import hullwright.network.BoatSeries;
import hullwright.rules.Finding;
import java.util.List;

/**
 * The boats of a project, for those who compute or draw and do not check.
 *
 * @param boats the boats, by series in the order of the files; combinations of options before sold hulls
 * @param series what each series offers and sells, whether or not it has the boats that were asked for
 * @param problems the problems of the texts
 * @param gaps what could not be read, in words
 */
public record BoatsRead(List<Boat> boats, List<BoatSeries> series, List<Finding> problems, List<String> gaps) {

	public BoatsRead {
		boats = List.copyOf(boats);
		series = List.copyOf(series);
		problems = List.copyOf(problems);
		gaps = List.copyOf(gaps);
	}
}
