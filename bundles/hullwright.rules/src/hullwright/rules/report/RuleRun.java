/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.report;

import java.util.Optional;

/**
 * What became of a rule in a check.
 *
 * @param rule the id of the rule
 * @param contributor the bundle that contributed it
 * @param state whether it ran
 * @param reason why it did not run to the end, if so
 */
public record RuleRun(String rule, String contributor, State state, Optional<String> reason) {

	/** What became of it. */
	public enum State {
		/** It looked at every boat. */
		RUN,
		/** The profile switches it off. */
		OFF,
		/** It failed and has been switched off for the rest of the session. */
		FAILED
	}
}
