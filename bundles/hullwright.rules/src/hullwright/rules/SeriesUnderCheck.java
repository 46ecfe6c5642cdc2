/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import hullwright.network.Boat;
import hullwright.network.BoatSeries;
import hullwright.network.Selection;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a rule of a series is given: what the series offers and sells, its boats, and what is in force for this rule in this house.
 */
public final class SeriesUnderCheck extends UnderCheck {

	private final BoatSeries series;
	private final List<Selection> boats;
	private final boolean complete;
	private final Function<Selection, Boat> build;

	/**
	 * A series for one rule to look at.
	 *
	 * @param boats the boats that are checked
	 * @param complete whether these are all that can be ordered and all that are sold
	 * @param build makes a boat of the series
	 */
	public SeriesUnderCheck(BoatSeries series, List<Selection> boats, boolean complete, Function<Selection, Boat> build, RuleInForce inForce,
			HouseDemands house) {
		super(inForce, house);
		this.series = series;
		this.boats = List.copyOf(boats);
		this.complete = complete;
		this.build = build;
	}

	/** What the series offers and sells. */
	public BoatSeries series() {
		return series;
	}

	/** The boats that are checked: combinations of options, then sold hulls. */
	public List<Selection> selections() {
		return boats;
	}

	/** Whether these are all that can be ordered and all that are sold, so that what none of them has no boat has. */
	public boolean isComplete() {
		return complete;
	}

	/** The boats that are checked, each built when it is reached. */
	public Stream<Boat> boats() {
		return boats.stream().map(build);
	}
}
