/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import java.util.List;

import hullwright.network.FittedDevice;
import hullwright.network.data.Passing;
import hullwright.network.data.Sentence;

/**
 * What a device passes on from one of its ports to another.
 *
 * @param rules the rules that concern both ports
 */
record PassingRules(List<Passing> rules) {

	static PassingRules of(FittedDevice device, String input, String output) {
		return new PassingRules(input.equals(output) ? List.of() : device.settings().passes().stream()
				.filter(each -> each.from().map(input::equals).orElse(true) && each.to().map(output::equals).orElse(true)).toList());
	}

	boolean pass(SentenceOnLine told) {
		Sentence sentence = told.sentence();
		return rules.stream().anyMatch(rule -> rule.messages().map(some -> some.contains(sentence)).orElse(true));
	}
}
