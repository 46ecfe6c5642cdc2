/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.check.Addition;
import hullwright.check.SeriesInText;
import hullwright.check.Snapshot;
import hullwright.lang.ide.starter.Statements;
import hullwright.network.BoatSeries;
import hullwright.workbench.live.ProjectText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.eclipse.core.resources.IResource;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

/**
 * Asks for a hull that is sold: of which series, with which number and with which options. What cannot be ordered together is told.
 */
final class HullPage extends ReadingPage<List<SeriesInText>> {

	private final Optional<IResource> chosen;
	private Combo series;
	private Text number;
	private Table options;

	HullPage(Optional<IResource> chosen) {
		super("hull", "New hull", "A boat that is sold: a number and the options that were ordered.", chosen);
		this.chosen = chosen;
	}

	@Override
	void createMore(Composite parent) {
		series = combo("Series", List.of());
		number = text("Number", "1", "A number, or a name such as prototype");
		labelOfHigh(parent, "Options");
		options = new Table(parent, SWT.CHECK | SWT.BORDER | SWT.V_SCROLL | SWT.FULL_SELECTION);
		new TableColumn(options, SWT.NONE).setText("Option");
		new TableColumn(options, SWT.NONE).setText("Title");
		new TableColumn(options, SWT.NONE).setText("Goes with");
		options.setHeaderVisible(true);
		GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, 200).applyTo(options);
		options.addListener(SWT.Selection, event -> {
			if (event.detail == SWT.CHECK) {
				changed();
			}
		});
		series.addListener(SWT.Selection, event -> fillOptions());
	}

	@Override
	List<SeriesInText> look(Snapshot snapshot) {
		return ProjectText.engine().texts().series(snapshot);
	}

	@Override
	void fill(Read<List<SeriesInText>> found) {
		series.setItems(found.found().stream().map(each -> each.outline().name() + " (" + each.file() + ")").toArray(String[]::new));
		Optional<String> file = chosen.flatMap(found.text()::relative);
		int wanted = 0;
		for (int at = 0; at < found.found().size(); at++) {
			wanted = Optional.of(found.found().get(at).file()).equals(file) ? at : wanted;
		}
		if (!found.found().isEmpty()) {
			series.select(wanted);
			fillOptions();
		}
	}

	private void fillOptions() {
		SeriesInText wanted = wanted();
		options.removeAll();
		SortedSet<String> first = wanted.options().orderable(1).combinations().stream().findFirst().orElseGet(TreeSet::new);
		for (BoatSeries.Option option : wanted.outline().options()) {
			TableItem item = new TableItem(options, SWT.NONE);
			item.setText(new String[] { option.name(), option.title(), condition(option) });
			item.setChecked(first.contains(option.name()));
		}
		for (TableColumn column : options.getColumns()) {
			column.pack();
		}
		number.setText(next(wanted.outline()));
		changed();
	}

	private static String condition(BoatSeries.Option option) {
		List<String> words = new ArrayList<>();
		if (!option.requires().isEmpty()) {
			words.add("requires " + option.requires().stream().sorted().collect(Collectors.joining(" and ")));
		}
		if (!option.excludes().isEmpty()) {
			words.add("excludes " + option.excludes().stream().sorted().collect(Collectors.joining(" and ")));
		}
		return String.join(", ", words);
	}

	private static String next(BoatSeries outline) {
		int highest = outline.hulls().stream().map(BoatSeries.SoldHull::name).filter(name -> name.matches("\\d{1,8}")).mapToInt(Integer::parseInt).max().orElse(0);
		return String.valueOf(highest + 1);
	}

	private SeriesInText wanted() {
		return read().found().get(Math.max(0, series.getSelectionIndex()));
	}

	private List<String> ordered() {
		return Arrays.stream(options.getItems()).filter(TableItem::getChecked).map(TableItem::getText).toList();
	}

	@Override
	Optional<String> problem(Read<List<SeriesInText>> found) {
		if (found.found().isEmpty()) {
			return Optional.of("No series of this project can be read. Mend its texts first, or make one by File, New, Series.");
		}
		String wished = number.getText().strip();
		if (!wished.matches("\\d{1,8}|[a-zA-Z_][a-zA-Z0-9_]*")) {
			return Optional.of("A hull has a number, or a name of letters, digits and _.");
		}
		if (wanted().outline().hulls().stream().anyMatch(hull -> hull.name().equals(wished))) {
			return Optional.of("There is a hull " + wished + " already.");
		}
		Set<String> ordered = new LinkedHashSet<>(ordered());
		return wanted().options().whyNot(ordered).map(why -> why.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + why.substring(1) + ".");
	}

	@Override
	Map<String, String> texts() {
		return Map.of(wanted().file(), statement());
	}

	/** The hull, as the text will say it. */
	String statement() {
		return Statements.hull(number.getText().strip(), ordered());
	}

	/** The file that it goes into. */
	String file() {
		return wanted().file();
	}

	/** The hull as something that is added to its series. */
	Addition addition() {
		return new Addition(Addition.Kind.HULL, wanted().outline().origin(), statement());
	}

	@Override
	public void setVisible(boolean visible) {
		super.setVisible(visible);
		if (visible) {
			options.setFocus();
		}
	}
}
