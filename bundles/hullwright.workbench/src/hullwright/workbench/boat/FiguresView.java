/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.boat;

import hullwright.documents.chart.Chart;
import hullwright.documents.chart.FigureChart;
import hullwright.documents.chart.PowerCondition;
import hullwright.lang.ide.LiveBoat;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IMemento;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.PartInitException;

/**
 * The figures of the boat in view as pictures: voltages, currents, bus load, response times, serial lines.
 */
public final class FiguresView extends BoatPictureView {

	/** The id under which plugin.xml declares this view. */
	public static final String ID = "hullwright.workbench.figures";

	private static final String FIGURE = "figure";

	private Combo figure;
	private Combo state;
	private Combo condition;
	private FigureChart first = FigureChart.VOLTAGE;

	@Override
	public void init(IViewSite site, IMemento memento) throws PartInitException {
		super.init(site, memento);
		String kept = memento == null ? null : memento.getString(FIGURE);
		first = Arrays.stream(FigureChart.values()).filter(each -> each.name().equals(kept)).findFirst().orElse(FigureChart.VOLTAGE);
	}

	@Override
	public void saveState(IMemento memento) {
		memento.putString(FIGURE, chosen().name());
	}

	@Override
	protected void controlsAbove(Composite parent) {
		Composite row = new Composite(parent, SWT.NONE);
		RowLayoutFactory.fillDefaults().spacing(6).applyTo(row);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
		figure = combo(row, "Which figures");
		Arrays.stream(FigureChart.values()).map(FigureChart::title).forEach(figure::add);
		figure.select(first.ordinal());
		state = combo(row, "In which power state");
		condition = combo(row, "Under which conditions");
		Arrays.stream(PowerCondition.values()).map(PowerCondition::title).forEach(condition::add);
		condition.select(0);
	}

	private Combo combo(Composite row, String tip) {
		Combo combo = new Combo(row, SWT.READ_ONLY);
		combo.setToolTipText(tip);
		combo.addListener(SWT.Selection, event -> BoatInView.get().current().filter(boat -> boat.boat().isPresent()).ifPresent(this::show));
		return combo;
	}

	@Override
	public void createPartControl(Composite parent) {
		super.createPartControl(parent);
		offerTable();
		canvas().startInNaturalSize();
	}

	private FigureChart chosen() {
		return FigureChart.values()[Math.max(0, figure.getSelectionIndex())];
	}

	@Override
	protected void show(LiveBoat boat) {
		FigureChart wanted = chosen();
		PowerCondition under = PowerCondition.values()[Math.max(0, condition.getSelectionIndex())];
		String in = state.getText();
		AtomicReference<Chart> drawn = new AtomicReference<>();
		AtomicReference<List<String>> states = new AtomicReference<>(List.of());
		AtomicReference<String> busiest = new AtomicReference<>("");
		draw("Drawing figures", monitor -> {
			if (wanted.isElectric()) {
				states.set(boat.figures(FigureChart::states).orElseThrow());
				busiest.set(boat.figures(FigureChart::busiestState).orElseThrow());
			}
			drawn.set(boat.figures(figures -> wanted.of(figures, in, under)).orElseThrow());
			return drawn.get().scene();
		}, scene -> {
			offer(wanted, states.get(), busiest.get());
			chart(boat, drawn.get(), wanted.isElectric() ? "No device is fed in this power state." : "There is nothing of the kind on this boat.");
		});
	}

	/** Power states and conditions are for electric figures only. */
	private void offer(FigureChart wanted, List<String> states, String busiest) {
		boolean several = states.size() > 1;
		if (wanted.isElectric() && !List.of(state.getItems()).equals(states)) {
			String before = state.getText();
			state.setItems(states.toArray(String[]::new));
			state.select(Math.max(0, states.indexOf(states.contains(before) ? before : busiest)));
		}
		state.setVisible(wanted.isElectric() && several);
		condition.setVisible(wanted.isElectric());
		state.getParent().getParent().layout(true, true);
	}
}
