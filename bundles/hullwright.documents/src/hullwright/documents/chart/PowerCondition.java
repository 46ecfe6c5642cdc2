/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.chart;

import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.PowerFlow;

/**
 * The circumstances that voltages and currents are looked at in.
 */
public enum PowerCondition {
	/** Lowest bank, guaranteed loads, hottest wire. */
	LOWEST("Lowest voltages"),
	/** Everything as it usually is. */
	USUAL("As usual"),
	/** Highest bank, usual loads, coldest wire. */
	HIGHEST("Highest voltages"),
	/** Lowest bank, and all devices start at once. */
	STARTING("All starting at once");

	private final String title;

	PowerCondition(String title) {
		this.title = title;
	}

	/** What people call it. */
	public String title() {
		return title;
	}

	PowerFlow of(StateElectrics state) {
		return switch (this) {
		case LOWEST -> state.lowest();
		case USUAL -> state.nominal();
		case HIGHEST -> state.highest();
		case STARTING -> state.starting();
		};
	}
}
