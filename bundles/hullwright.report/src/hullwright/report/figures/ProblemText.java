/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.Figures;
import hullwright.analysis.data.DataProblem;
import hullwright.analysis.electrics.BoatElectrics;
import hullwright.analysis.line.LineFigures;
import hullwright.analysis.line.LineProblem;
import hullwright.analysis.power.PowerProblem;
import hullwright.network.Origin;
import hullwright.network.PlacesInText;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What kept figures from being computed, in words; each once, whatever the states in which it occurs.
 */
final class ProblemText {

	private final Figures figures;
	private final BoatElectrics boat;
	private final Wording wording;
	private final PlacesInText places;

	ProblemText(Figures figures, Wording wording) {
		this.figures = figures;
		boat = figures.electrics();
		this.wording = wording;
		places = new PlacesInText(boat.boat());
	}

	/**
	 * A problem in words.
	 *
	 * @param origin the place of what it concerns first
	 */
	record Told(String message, Origin origin) {
	}

	List<Told> all() {
		Set<Told> told = new LinkedHashSet<>();
		boat.states().stream().flatMap(state -> Stream.of(state.nominal(), state.lowest(), state.highest(), state.starting()))
				.flatMap(flow -> flow.problems().stream()).forEach(each -> told.add(new Told(word(each), places.of(each.subject()))));
		boat.lines().forEach(line -> line.problems()
				.forEach(each -> told.add(new Told(word(line, each), places.of(each.subject().orElse(line.network()))))));
		SerialProblemText serial = new SerialProblemText(wording);
		figures.serialLines().forEach(line -> line.problems()
				.forEach(each -> told.add(new Told(serial.word(line, each), places.of(line.line().name())))));
		figures.data().problems().forEach(each -> told.add(new Told(word(each), places.of(each.subject()))));
		return List.copyOf(told);
	}

	private String word(DataProblem problem) {
		if (problem instanceof DataProblem.TurnsIntoItself itself) {
			return wording.name(itself.device()) + " turns " + itself.use() + " into itself on one network";
		} else if (problem instanceof DataProblem.TakesFromSilent silent) {
			return wording.name(silent.device()) + " is set to take " + silent.use() + " from " + wording.name(silent.from()) + ", which does not tell it";
		} else if (problem instanceof DataProblem.PassesBack back) {
			return wording.name(back.device()) + " has both sides on " + wording.name(back.carrier().name())
					+ ", where it would tell again what it hears there";
		} else if (problem instanceof DataProblem.IntervalImpossible impossible) {
			return wording.name(impossible.device()) + " tells " + impossible.use() + " every " + Wording.time(impossible.interval())
					+ ", which cannot be";
		}
		return "data come to " + wording.name(problem.subject()) + " by more ways than are worth looking at; some are left out";
	}

	private String word(PowerProblem problem) {
		if (problem instanceof PowerProblem.Unfed unfed) {
			return "nothing feeds " + wording.some(unfed.devices(), unfed.network()) + " on " + wording.name(unfed.network())
					+ ": no supply enters there, or there is no way back to it";
		} else if (problem instanceof PowerProblem.NoVoltage source) {
			return "no text states the voltage of " + wording.name(source.source()) + ", so it was left out";
		} else if (problem instanceof PowerProblem.CannotBeFed load) {
			return "the voltage breaks down at " + wording.name(load.device()) + ": only " + Wording.perCent(load.share()) + " of all loads can be fed";
		} else if (problem instanceof PowerProblem.ZeroResistanceLoop loop) {
			return wording.name(loop.element()) + " closes a loop without any resistance: nothing tells how the current divides";
		} else if (problem instanceof PowerProblem.ShortedSource shorted) {
			return wording.name(shorted.element()) + " lies across " + Wording.volts(shorted.across()) + " without any resistance";
		} else if (problem instanceof PowerProblem.ParallelSources parallel) {
			return wording.name(parallel.source()) + " lies beside another source without any resistance between, "
					+ Wording.volts(parallel.difference()) + " apart; it was left out";
		} else if (problem instanceof PowerProblem.AbsurdValue absurd) {
			return wording.name(absurd.element()) + " has a value that cannot be (" + absurd.value() + "); it was left out";
		}
		return "values of " + wording.name(((PowerProblem.OutOfRange) problem).element()) + " lie too far apart to be computed";
	}

	private String word(LineFigures line, LineProblem problem) {
		if (problem instanceof LineProblem.Parted parted) {
			return "the signal line of " + wording.name(line.network()) + " is in " + parted.parts().size() + " parts that do not hear each other: "
					+ parted.parts().stream().map(each -> wording.some(each, line.network())).collect(Collectors.joining(" / "));
		}
		if (problem instanceof LineProblem.Shorted shorted) {
			return wording.some(shorted.by(), line.network()) + " lies across the signal pair of " + wording.name(line.network())
					+ " without resistance: nothing can be heard";
		}
		return "nothing terminates the signal line of " + wording.name(line.network());
	}
}
