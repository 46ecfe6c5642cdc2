/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import hullwright.analysis.Figures;
import hullwright.network.Boat;

/**
 * What a rule is given: the boat, its figures, and what is in force for this rule in this house.
 */
public final class BoatUnderCheck extends UnderCheck {

	private final Figures figures;

	/** A boat for one rule to look at. */
	public BoatUnderCheck(Figures figures, RuleInForce inForce, HouseDemands house) {
		super(inForce, house);
		this.figures = figures;
	}

	/** The boat as it will be built. */
	public Boat boat() {
		return figures.boat();
	}

	/** What the analyses say of it. */
	public Figures figures() {
		return figures;
	}
}
