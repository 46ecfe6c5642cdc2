/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.catalog;

import hullwright.check.OfferedPart;
import hullwright.network.part.Connector;
import hullwright.network.part.Zone;
import hullwright.check.ProjectTexts;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/**
 * What somebody looks for: words, what the part is for, what it plugs into, where it stands, and whether it may be bought.
 */
final class FilterBar {

	private static final String ANY_CONNECTOR = "Plugs into anything";
	private static final String AT_CURSOR = "Plugs into the part at the cursor";

	private final Text words;
	private final Combo use;
	private final Combo connector;
	private final Combo zone;
	private final Button approved;
	private final Runnable changed;
	private Set<String> approvedCatalogs = Set.of();
	private Set<Connector> atCursor = Set.of();

	FilterBar(Composite parent, Runnable changed) {
		this.changed = changed;
		Composite bar = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(5).margins(6, 6).applyTo(bar);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
		words = new Text(bar, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		words.setMessage("Words, such as: heading, 4 ports, mini, 127250");
		GridDataFactory.fillDefaults().grab(true, false).hint(240, SWT.DEFAULT).applyTo(words);
		words.addModifyListener(event -> changed.run());
		use = combo(bar, "Anything");
		Arrays.stream(PartUse.values()).map(PartUse::plural).forEach(use::add);
		connector = combo(bar, ANY_CONNECTOR);
		connector.add(AT_CURSOR);
		zone = combo(bar, "Anywhere");
		Arrays.stream(Zone.values()).map(each -> "Suits " + each.name().toLowerCase(Locale.ROOT)).forEach(zone::add);
		approved = new Button(bar, SWT.CHECK);
		approved.setText("Approved only");
		approved.setToolTipText("Parts of the catalogs that the profile of the project approves");
		approved.setEnabled(false);
		approved.addListener(SWT.Selection, event -> changed.run());
	}

	private Combo combo(Composite bar, String first) {
		Combo combo = new Combo(bar, SWT.READ_ONLY);
		combo.add(first);
		combo.select(0);
		combo.addListener(SWT.Selection, event -> changed.run());
		return combo;
	}

	/** Offers the connectors that parts have, and what the profile approves, if it says so. */
	void offer(List<OfferedPart> parts, Optional<Set<String>> catalogs) {
		Set<String> connectors = new TreeSet<>();
		parts.forEach(each -> ProjectTexts.connectors(each.part()).forEach(one -> connectors.add(PartFilter.opposite(one))));
		String before = connector.getText();
		List<String> choices = new ArrayList<>(List.of(ANY_CONNECTOR, AT_CURSOR));
		connectors.forEach(each -> choices.add("Plugs into " + each));
		connector.setItems(choices.toArray(String[]::new));
		connector.select(Math.max(0, choices.indexOf(before)));
		approvedCatalogs = catalogs.orElse(Set.of());
		approved.setEnabled(catalogs.isPresent());
		if (catalogs.isEmpty()) {
			approved.setSelection(false);
		}
	}

	/** Says what stands at the cursor; the filter follows if it is wanted. */
	void cursorAt(Set<Connector> connectors) {
		if (!atCursor.equals(connectors)) {
			atCursor = connectors;
			if (wantsCursor()) {
				changed.run();
			}
		}
	}

	boolean wantsCursor() {
		return connector.getText().equals(AT_CURSOR);
	}

	/** Looks for what plugs into the part at the cursor. */
	void followCursor() {
		connector.select(1);
		changed.run();
	}

	/** Takes all filters back. */
	void clear() {
		words.setText("");
		use.select(0);
		connector.select(0);
		zone.select(0);
		approved.setSelection(false);
		changed.run();
	}

	PartFilter filter() {
		String plugs = connector.getText();
		return new PartFilter(words.getText(),
				use.getSelectionIndex() <= 0 ? Optional.empty() : Optional.of(PartUse.values()[use.getSelectionIndex() - 1]),
				connector.getSelectionIndex() > 1 ? Optional.of(plugs.substring("Plugs into ".length())) : Optional.empty(),
				wantsCursor() ? Optional.of(atCursor) : Optional.empty(),
				zone.getSelectionIndex() <= 0 ? Optional.empty() : Optional.of(Zone.values()[zone.getSelectionIndex() - 1]),
				approved.getSelection() ? Optional.of(approvedCatalogs) : Optional.empty());
	}

	/** The field for words, where the keyboard begins. */
	Text words() {
		return words;
	}
}
