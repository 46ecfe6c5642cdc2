/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.Figures;
import hullwright.analysis.data.DataProblem;
import hullwright.network.Origin;
import hullwright.rules.Finding;
import java.util.List;

/**
 * The figures of the boats of a project.
 *
 * @param name the folder of the project, as it is shown
 * @param boats the boats
 * @param problems the problems of its texts
 * @param gaps what could not be computed, in words
 * @param plainest whether nobody chose a boat, so that it is that with the fewest options
 */
public record ProjectFigures(String name, List<Figures> boats, List<Finding> problems, List<String> gaps,
		boolean plainest) {

	public ProjectFigures {
		boats = List.copyOf(boats);
		problems = List.copyOf(problems);
		gaps = List.copyOf(gaps);
	}

	/** Whether everything that was asked for is there. */
	public boolean isComplete() {
		return gaps.isEmpty() && boats.stream().flatMap(boat -> boat.electrics().states().stream()).allMatch(state -> state.lowest().problems().isEmpty()
				&& state.nominal().problems().isEmpty() && state.highest().problems().isEmpty() && state.starting().problems().isEmpty())
				&& boats.stream().flatMap(boat -> boat.electrics().lines().stream()).allMatch(line -> line.problems().isEmpty())
				&& boats.stream().flatMap(boat -> boat.data().problems().stream()).noneMatch(DataProblem.TooManyWays.class::isInstance)
				&& boats.stream().flatMap(boat -> boat.serialLines().stream()).allMatch(line -> line.problems().isEmpty());
	}

	/** A place of the project's files, leading there from where the command was given. */
	String place(Origin origin) {
		String file = name.isEmpty() ? origin.file() : name + "/" + origin.file();
		return origin.file().isEmpty() ? "(no file)" : file + ":" + origin.line() + ":" + origin.column();
	}
}
