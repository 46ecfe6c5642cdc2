/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.chart;

import hullwright.analysis.Figures;
import hullwright.analysis.electrics.StateElectrics;
import hullwright.analysis.power.DeviceReading;
import java.util.List;

/**
 * The figures of a boat that can be looked at as a picture.
 */
public enum FigureChart {
	/** The voltage along each backbone and at its devices. */
	VOLTAGE("Voltage along the backbone", true),
	/** The current through each cable against what it may carry. */
	CURRENT("Current through cables", true),
	/** What each device asks of its bus. */
	BUS_LOAD("Bus load by device", false),
	/** How long each message takes at most against how often it comes. */
	RESPONSE("Response time of messages", false),
	/** How full each serial line is. */
	SERIAL("Load of serial lines", false);

	private final String title;
	private final boolean electric;

	FigureChart(String title, boolean electric) {
		this.title = title;
		this.electric = electric;
	}

	/** What people call it. */
	public String title() {
		return title;
	}

	/** Whether it is of one power state and {@link PowerCondition}. */
	public boolean isElectric() {
		return electric;
	}

	/**
	 * Draws it.
	 *
	 * @param state the name of the power state; the busiest one if the boat has none of this name
	 */
	public Chart of(Figures figures, String state, PowerCondition condition) {
		return switch (this) {
		case VOLTAGE -> new VoltageChart(figures, electrics(figures, state), condition).chart();
		case CURRENT -> BarCharts.currents(figures, condition.of(electrics(figures, state)));
		case BUS_LOAD -> BarCharts.busLoad(figures);
		case RESPONSE -> BarCharts.responses(figures);
		case SERIAL -> BarCharts.serialLines(figures);
		};
	}

	/** The names of the power states of a boat, with what people call them; one empty name if none is declared. */
	public static List<String> states(Figures figures) {
		return figures.electrics().states().stream().map(FigureChart::name).toList();
	}

	/** The power state in which most devices are fed, the first of several: the one that people look at first. */
	public static String busiestState(Figures figures) {
		return name(busiest(figures.electrics().states()));
	}

	private static StateElectrics electrics(Figures figures, String state) {
		List<StateElectrics> states = figures.electrics().states();
		return states.stream().filter(each -> name(each).equals(state)).findFirst().orElseGet(() -> busiest(states));
	}

	private static StateElectrics busiest(List<StateElectrics> states) {
		StateElectrics most = states.get(0);
		for (StateElectrics each : states) {
			most = fed(each) > fed(most) ? each : most;
		}
		return most;
	}

	private static long fed(StateElectrics state) {
		return state.nominal().devices().stream().filter(DeviceReading::fed).count();
	}

	private static String name(StateElectrics state) {
		return state.state().map(each -> each.title().isEmpty() ? Names.simple(each.name()) : each.title()).orElse("");
	}
}
