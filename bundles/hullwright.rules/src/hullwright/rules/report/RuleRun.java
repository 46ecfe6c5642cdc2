/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.report;

import hullwright.rules.RuleDescription;
import java.util.Optional;

/**
 * What became of a rule in a check.
 *
 * @param description what the rule is, as it ships
 * @param contributor the bundle that contributed it
 * @param state whether it ran
 * @param reason why it did not run to the end, if so
 * @param page what is to be said about it, in Markdown, if it has a page
 */
public record RuleRun(RuleDescription description, String contributor, State state, Optional<String> reason, Optional<String> page) {

	/** The id of the rule. */
	public String rule() {
		return description.id();
	}

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
