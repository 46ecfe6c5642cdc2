/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.report.figures;

import hullwright.analysis.electrics.StateElectrics;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The power states of a boat in a sentence: which of them are alike, and in which no network is fed.
 */
final class StateText {

	private final List<StateElectrics> states;

	StateText(List<StateElectrics> states) {
		this.states = states;
	}

	/** The sentence; none if there is but one state. */
	Optional<String> sentence() {
		if (states.size() < 2) {
			return Optional.empty();
		}
		List<String> told = new ArrayList<>();
		for (int i = 0; i < states.size(); i++) {
			told.add(Wording.state(states.get(i).state()) + remark(states.get(i), states.subList(0, i)));
		}
		return Optional.of("Power states: " + String.join("; ", told) + ".");
	}

	private static String remark(StateElectrics state, List<StateElectrics> before) {
		if (!state.feedsAny()) {
			return " (no device on a network is fed)";
		}
		return before.stream().filter(state::isAlike).findFirst().map(each -> " (as " + Wording.state(each.state()) + ")")
				.or(() -> before.stream().filter(state::feedsAlike).reduce((first, second) -> second)
						.map(each -> " (the networks as " + Wording.state(each.state()) + ")"))
				.orElse("");
	}
}
