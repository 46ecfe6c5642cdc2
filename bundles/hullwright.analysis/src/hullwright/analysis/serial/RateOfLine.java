/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

import hullwright.network.SerialLine;
import hullwright.quantity.BitRate;

/**
 * Finds out how fast a line signals, and which of its ends cannot.
 *
 * @param rate how fast
 * @param shared the rates that all its ends can be set to, as far as they say
 * @param problems what is wrong with it
 * @param assumed the ends that are taken to follow the others
 */
record RateOfLine(LineRate rate, List<BitRate> shared, List<SerialProblem> problems, List<LineEnd> assumed) {

	static RateOfLine of(SerialLine line, LineEnds ends) {
		List<SerialProblem> problems = new ArrayList<>();
		List<LineEnd> stating = ends.all().stream().filter(each -> !possible(each).isEmpty()).toList();
		List<BitRate> shared = shared(stating);
		LineRate rate = line.rate().isPresent() ? stated(line.rate().get(), ends, problems) : open(stating, shared, problems);
		List<LineEnd> silent = rate.rate().isEmpty() ? List.of() : ends.all().stream().filter(each -> possible(each).isEmpty()).toList();
		return new RateOfLine(rate, shared, problems, silent);
	}

	private static LineRate stated(BitRate rate, LineEnds ends, List<SerialProblem> problems) {
		if (!canBe(rate)) {
			problems.add(new SerialProblem.RateImpossible(rate));
			return new LineRate(Optional.empty(), LineRate.Basis.UNKNOWN);
		}
		for (LineEnd end : ends.all()) {
			List<BitRate> possible = possible(end);
			if (!possible.isEmpty() && !possible.contains(rate)) {
				problems.add(new SerialProblem.RateNotPossible(end.port(), rate, possible));
			}
		}
		return new LineRate(Optional.of(rate), LineRate.Basis.STATED);
	}

	private static List<BitRate> shared(List<LineEnd> stating) {
		List<BitRate> common = stating.isEmpty() ? List.of() : new ArrayList<>(new LinkedHashSet<>(possible(stating.get(0))));
		stating.forEach(each -> common.retainAll(possible(each)));
		return List.copyOf(common);
	}

	private static LineRate open(List<LineEnd> stating, List<BitRate> common, List<SerialProblem> problems) {
		if (common.size() == 1) {
			return new LineRate(Optional.of(common.get(0)), LineRate.Basis.ONLY_SHARED);
		}
		problems.add(stating.isEmpty() || !common.isEmpty() ? new SerialProblem.RateOpen(common)
				: new SerialProblem.NoCommonRate(stating.stream().map(each -> new SerialProblem.PossibleRates(each.port(), possible(each))).toList()));
		return new LineRate(Optional.empty(), LineRate.Basis.UNKNOWN);
	}

	private static List<BitRate> possible(LineEnd end) {
		List<BitRate> rates = end.serial().rates();
		return rates.stream().allMatch(RateOfLine::canBe) ? rates : rates.stream().filter(RateOfLine::canBe).toList();
	}

	/** A bit in a second is the least that counts as signalling. */
	private static boolean canBe(BitRate rate) {
		return rate.bitsPerSecond() >= 1 && Double.isFinite(rate.bitsPerSecond());
	}
}
