/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * Adds up what a check spends its time on. For one check, or several one after the other.
 */
public final class CheckClock {

	/** What a check does, one after the other. */
	public enum Stage {
		/** Texts that have changed are parsed and linked. */
		READING,
		/** Series are copied out of their specs. */
		PLANNING,
		/** Boats are made and rules look at them; the rules by themselves are counted apart, too. */
		CHECKING,
		/** Findings are put in order, and set aside where that is wanted. */
		SORTING
	}

	private final Map<Stage, Long> stages = new EnumMap<>(Stage.class);
	private final Map<String, Long> rules = new TreeMap<>();

	/** Time of a stage, in ns. */
	synchronized void spent(Stage stage, long nanos) {
		stages.merge(stage, nanos, Long::sum);
	}

	/** Time of a rule on one boat, in ns; what it asks of the analyses for the first time is in it. */
	synchronized void spent(String rule, long nanos) {
		rules.merge(rule, nanos, Long::sum);
	}

	/** What each stage took, in ns. */
	public synchronized Map<Stage, Long> stages() {
		return new EnumMap<>(stages);
	}

	/** What each rule took on all boats, in ns, by its id. */
	public synchronized Map<String, Long> rules() {
		return new TreeMap<>(rules);
	}
}
