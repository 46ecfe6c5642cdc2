/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.boat;

import hullwright.check.WantedBoats;
import hullwright.lang.ide.AllBoats;
import hullwright.lang.ide.LiveBoat;
import hullwright.network.BoatSeries;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

/**
 * Which boat of the series is in view: a hull that is sold, or any options that can be ordered together. Everything else in the
 * window follows.
 */
public final class BoatsView extends ViewPart {

	/** The id under which plugin.xml declares this view. */
	public static final String ID = "hullwright.workbench.boats";

	private static final String NO_BOAT = "No boat in view. Open a .hull file with a series, or declare one, and choose here which of its boats to look at.";

	private final Consumer<LiveBoat> follow = this::show;
	private final Consumer<AllBoats> followAll = this::show;
	private ScrolledComposite scroller;
	private Composite content;
	private Label note;
	/** What the controls were made for. */
	private List<Object> made = List.of();
	private BoatSeries series;
	private Button plainest;
	private final Map<Button, String> hulls = new LinkedHashMap<>();
	private final Map<Button, String> options = new LinkedHashMap<>();
	private Button own;
	private FleetLine allBoats;
	private final List<FoundOnButton> verdicts = new ArrayList<>();

	@Override
	public void createPartControl(Composite parent) {
		scroller = new ScrolledComposite(parent, SWT.H_SCROLL | SWT.V_SCROLL);
		scroller.setExpandHorizontal(true);
		scroller.setExpandVertical(true);
		say(NO_BOAT);
		BoatInView.get().join(follow);
		BoatInView.get().joinAll(followAll);
	}

	@Override
	public void dispose() {
		BoatInView.get().leave(follow);
		BoatInView.get().leaveAll(followAll);
		super.dispose();
	}

	@Override
	public void setFocus() {
		// on what is chosen, so that the arrow keys lead to what is beside it
		Stream.concat(Stream.of(plainest, own), hulls.keySet().stream())
				.filter(button -> button != null && !button.isDisposed() && button.getSelection()).findFirst()
				.ifPresentOrElse(Control::setFocus, content::setFocus);
	}

	private void say(String sentence) {
		made = List.of();
		fresh();
		Label label = new Label(content, SWT.WRAP);
		label.setText(sentence);
		wide(160).applyTo(label);
		done();
	}

	private void fresh() {
		if (content != null) {
			content.dispose();
		}
		hulls.clear();
		options.clear();
		verdicts.clear();
		allBoats = null;
		content = new Composite(scroller, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(10, 8).spacing(5, 3).applyTo(content);
	}

	private void done() {
		scroller.setContent(content);
		scroller.setMinSize(content.computeSize(SWT.DEFAULT, SWT.DEFAULT));
		content.layout();
	}

	private void show(LiveBoat boat) {
		if (boat.series().isEmpty()) {
			say(boat.notes().isEmpty() ? NO_BOAT : "The series cannot be read: " + boat.notes().get(0));
			return;
		}
		series = boat.series().get();
		List<String> names = boat.offered().stream().map(BoatSeries::name).toList();
		List<Object> wanted = List.of(names, series.name(), series.options(), series.choices(), series.hulls());
		if (!wanted.equals(made)) {
			build(names);
			made = wanted;
		}
		mark(boat);
		say(boat.notes(), boat.outdated().isPresent());
		BoatInView.get().all().ifPresent(this::show);
	}

	/** How far the check of all boats is, and what it found on which. */
	private void show(AllBoats all) {
		if (allBoats != null && BoatInView.get().current().filter(boat -> boat.folder().equals(all.folder())).isPresent()) {
			boolean other = allBoats.show(all, series.name());
			for (FoundOnButton verdict : verdicts) {
				other |= verdict.show(all);
			}
			if (other) {
				done();
			}
		}
	}

	private void build(List<String> names) {
		fresh();
		if (names.size() > 1) {
			Combo combo = new Combo(content, SWT.READ_ONLY);
			names.forEach(combo::add);
			combo.select(names.indexOf(series.name()));
			combo.addListener(SWT.Selection, event -> BoatInView.get().choose(combo.getText(), BoatInView.get().wanted(combo.getText())));
			wide(0).applyTo(combo);
		}
		heading(series.title().isEmpty() ? series.name() : series.title());
		allBoats = new FleetLine(content);
		plainest = radio("Fewest options", () -> choose(new WantedBoats.Plainest()));
		for (BoatSeries.SoldHull hull : series.hulls()) {
			String unfit = hull.contradiction().map(why -> " (cannot be built: " + why + ")").orElse("");
			Button button = radio("Hull " + hull.name() + unfit, () -> choose(new WantedBoats.Sold(hull.name())));
			button.setToolTipText(hull.options().isEmpty() ? "No options" : String.join(", ", new TreeSet<>(hull.options())));
			hulls.put(button, hull.name());
			verdicts.add(new FoundOnButton(button, all -> all.ofHull(series.name(), hull.name())));
		}
		own = radio(series.options().isEmpty() ? "No options are offered" : "With these options:", this::chooseTicked);
		own.setEnabled(!series.options().isEmpty());
		options();
		note = new Label(content, SWT.WRAP);
		wide(160).indent(0, 6).applyTo(note);
		done();
	}

	/** As wide as the view, wrapping where the view is narrower than that if it is not 0. */
	private static GridDataFactory wide(int width) {
		return GridDataFactory.fillDefaults().grab(true, false).hint(width == 0 ? SWT.DEFAULT : width, SWT.DEFAULT);
	}

	private void heading(String title) {
		Label label = new Label(content, SWT.WRAP);
		label.setText(title.replace("&", "&&"));
		wide(160).applyTo(label);
	}

	private void options() {
		Set<String> inChoices = new TreeSet<>();
		series.choices().forEach(inChoices::addAll);
		List<BoatSeries.Option> free = series.options().stream().filter(option -> !inChoices.contains(option.name())).toList();
		free.forEach(option -> option(content, option, SWT.CHECK, 18));
		for (Set<String> choice : series.choices()) {
			// radio buttons of one parent exclude each other, so each group has a parent of its own
			Composite group = new Composite(content, SWT.NONE);
			GridLayoutFactory.fillDefaults().spacing(5, 3).applyTo(group);
			wide(0).indent(18, 0).applyTo(group);
			series.options().stream().filter(option -> choice.contains(option.name())).forEach(option -> option(group, option, SWT.RADIO, 0));
		}
	}

	private void option(Composite parent, BoatSeries.Option option, int style, int indent) {
		Button button = new Button(parent, style);
		button.setText((option.title().isEmpty() ? option.name() : option.title()).replace("&", "&&"));
		List<String> tips = new ArrayList<>(List.of(option.name()));
		if (!option.requires().isEmpty()) {
			tips.add("requires " + String.join(", ", new TreeSet<>(option.requires())));
		}
		if (style == SWT.CHECK && !option.excludes().isEmpty()) {
			tips.add("excludes " + String.join(", ", new TreeSet<>(option.excludes())));
		}
		button.setToolTipText(String.join("\n", tips));
		button.addListener(SWT.Selection, event -> {
			if (style == SWT.CHECK || button.getSelection()) {
				chooseTicked();
			}
		});
		GridDataFactory.fillDefaults().indent(indent, 0).applyTo(button);
		options.put(button, option.name());
		verdicts.add(new FoundOnButton(button, all -> all.ofOption(series.name(), option.name())));
	}

	private Button radio(String text, Runnable chosen) {
		Button button = new Button(content, SWT.RADIO);
		button.setText(text.replace("&", "&&"));
		button.addListener(SWT.Selection, event -> {
			if (button.getSelection()) {
				chosen.run();
			}
		});
		return button;
	}

	private void choose(WantedBoats boat) {
		BoatInView.get().choose(series.name(), boat);
	}

	private void chooseTicked() {
		TreeSet<String> ticked = new TreeSet<>();
		options.forEach((button, name) -> {
			if (button.getSelection()) {
				ticked.add(name);
			}
		});
		choose(new WantedBoats.WithOptions(ticked));
	}

	/** Marks what is asked for, and ticks the options of the boat that is shown. */
	private void mark(LiveBoat boat) {
		WantedBoats wish = BoatInView.get().wanted(series.name());
		plainest.setSelection(wish instanceof WantedBoats.Plainest);
		own.setSelection(wish instanceof WantedBoats.WithOptions);
		hulls.forEach((button, name) -> button.setSelection(wish instanceof WantedBoats.Sold sold && sold.name().equals(name)));
		Set<String> ticked = wish instanceof WantedBoats.WithOptions with ? with.options()
				: boat.boat().map(shown -> (Set<String>) shown.selection().options()).orElse(Set.of());
		options.forEach((button, name) -> button.setSelection(ticked.contains(name)));
	}

	private void say(List<String> notes, boolean outdated) {
		String text = outdated ? "The text cannot be read at the moment; shown is the last boat that could be."
				: notes.isEmpty() ? "" : "These do not go together, so the boat with the fewest options is shown: " + notes.get(0);
		if (!note.getText().equals(text)) {
			note.setText(text);
			done();
		}
	}
}
