/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.analysis.Figures;
import hullwright.check.BoatsRead;
import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.WantedBoats;
import hullwright.network.Boat;
import hullwright.network.power.PowerState;
import hullwright.report.figures.FiguresJson;
import hullwright.report.figures.FiguresText;
import hullwright.report.figures.ProjectFigures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/**
 * {@code hullwright compute}: voltages, currents, faults, the signal line and the traffic of one boat.
 */
@Command(name = "compute", sortOptions = false,
		description = "Computes one boat of each series: voltages and currents in every power state, short circuits, what is lost when one "
				+ "thing fails, the signal line, the traffic on the bus, serial lines, and what was assumed.",
		footer = { "", "Exit status: 0 everything was computed, 2 not everything could be." })
final class ComputeCommand implements Callable<Integer> {

	private final Terminal terminal;

	@Mixin
	private WantedProjects projects;

	@Mixin
	private HelpOption help;

	@ArgGroup
	private OneBoat oneBoat;

	@Option(names = "--state", paramLabel = "NAME", description = "Only this power state.")
	private String state;

	@Option(names = "--all", description = "Every line of every table, not only the worst.")
	private boolean all;

	@Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text", description = "How to report: text or json; without this, text.")
	private Format format;

	ComputeCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public Integer call() {
		if (!Format.OF_FIGURES.contains(format)) {
			throw new Refusal("figures are written as text or json, not as " + format);
		}
		WantedBoats wanted = oneBoat == null ? new WantedBoats.Plainest() : oneBoat.wanted();
		Checker checker = Checker.create();
		Map<Project, BoatsRead> read = new LinkedHashMap<>();
		for (Project project : projects.all()) {
			read.put(project, checker.boats(new CheckRequest(project.snapshot(), project.focus(), wanted, LocalDate.EPOCH)));
		}
		refuseUnknownState(read.values());
		List<ProjectFigures> figures = read.entrySet().stream().map(each -> figures(each.getKey(), each.getValue())).toList();
		terminal.out().print(format == Format.json ? FiguresJson.of(figures) : FiguresText.of(figures, all));
		return figures.stream().allMatch(ProjectFigures::isComplete) ? ExitStatus.CLEAN : ExitStatus.INCOMPLETE;
	}

	private void refuseUnknownState(Collection<BoatsRead> read) {
		Set<String> states = read.stream().flatMap(each -> each.boats().stream()).flatMap(boat -> boat.power().states().stream())
				.map(ComputeCommand::simpleName).collect(Collectors.toCollection(TreeSet::new));
		boolean any = read.stream().anyMatch(each -> !each.boats().isEmpty());
		if (state != null && any && !states.contains(state)) {
			throw new Refusal("there is no power state '" + state + "'; "
					+ (states.isEmpty() ? "none is declared here" : "there are " + String.join(", ", states)));
		}
	}

	private ProjectFigures figures(Project project, BoatsRead read) {
		List<Figures> computed = new ArrayList<>();
		List<String> gaps = new ArrayList<>(read.gaps());
		for (Boat boat : read.boats()) {
			Optional<PowerState> only = boat.power().states().stream().filter(each -> simpleName(each).equals(state)).findFirst();
			if (state == null || only.isPresent()) {
				computed.add(new Figures(boat, only));
			} else {
				gaps.add("series " + boat.series() + " has no power state '" + state + "'");
			}
		}
		return new ProjectFigures(project.folder(), computed, read.problems(), gaps, oneBoat == null);
	}

	private static String simpleName(PowerState state) {
		return state.name().substring(state.name().lastIndexOf('.') + 1);
	}
}
