/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.report;

import hullwright.network.Origin;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A finding that was made and does not count, with the reason.
 *
 * @param finding the finding and the boats that it occurs on
 * @param why why it does not count
 */
public record SetAside(ReportedFinding finding, Why why) {

	/** Why a finding does not count. */
	public sealed interface Why {
	}

	/**
	 * The yard lives with it.
	 *
	 * @param reason the reason that the waiver states
	 * @param until the last day on which the waiver holds; for ever, if empty
	 * @param place the waiver in the text
	 */
	public record Waived(String reason, Optional<LocalDate> until, Origin place) implements Why {
	}

	/** The baseline has it, and it is no worse than there. */
	public record InBaseline() implements Why {
	}

	/**
	 * Another finding makes it meaningless.
	 *
	 * @param rule the id of the rule of that finding
	 * @param element the qualified name of the element of that finding
	 */
	public record Silenced(String rule, String element) implements Why {
	}
}
