/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/**
 * A page that asks for a few values and shows the text that it will write. Each change is judged at once, in a sentence.
 */
abstract class DraftPage extends WizardPage {

	private static final int WIDTH = 620;
	private static final int PREVIEW_LINES_HIGH = 260;

	private Composite fields;
	private CTabFolder files;
	private boolean filling = true;

	DraftPage(String name, String title, String description) {
		super(name);
		setTitle(title);
		setDescription(description);
	}

	@Override
	public final void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(10, 10).spacing(0, 8).applyTo(page);
		fields = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(12, 6).applyTo(fields);
		GridDataFactory.fillDefaults().grab(true, false).hint(WIDTH, SWT.DEFAULT).applyTo(fields);
		createFields(fields);
		files = new CTabFolder(page, SWT.BORDER | SWT.FLAT);
		GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, PREVIEW_LINES_HIGH).applyTo(files);
		setControl(page);
		filling = false;
		changed();
	}

	/** Makes the fields, in two columns: what is asked, and where it is answered. */
	abstract void createFields(Composite parent);

	/** Why the values do not do, in a sentence, or empty if they do. */
	abstract Optional<String> problem();

	/** The texts that the values come to, by the name of the file. Asked only while there is no problem. */
	abstract Map<String, String> texts();

	/** What a person should know who leaves the values as they are; empty for nothing. */
	Optional<String> hint() {
		return Optional.empty();
	}

	/** To be called after each change of a value. */
	final void changed() {
		if (filling) {
			return;
		}
		Optional<String> problem = problem();
		setErrorMessage(problem.orElse(null));
		setMessage(problem.isEmpty() ? hint().orElse(null) : null, INFORMATION);
		setPageComplete(problem.isEmpty());
		if (problem.isEmpty()) {
			show(texts());
		}
	}

	private void show(Map<String, String> texts) {
		List<String> names = List.copyOf(texts.keySet());
		while (files.getItemCount() > names.size()) {
			files.getItem(files.getItemCount() - 1).dispose();
		}
		for (int at = 0; at < names.size(); at++) {
			CTabItem tab = at < files.getItemCount() ? files.getItem(at) : tab();
			tab.setText(names.get(at));
			((TextPreview) tab.getData()).show(texts.get(names.get(at)));
		}
		if (files.getSelectionIndex() < 0 && !names.isEmpty()) {
			files.setSelection(0);
		}
	}

	private CTabItem tab() {
		CTabItem tab = new CTabItem(files, SWT.NONE);
		TextPreview preview = new TextPreview(files);
		tab.setControl(preview.control());
		tab.setData(preview);
		tab.addDisposeListener(gone -> preview.control().dispose());
		return tab;
	}

	/** Shows the tab of a file first. */
	final void select(String file) {
		for (CTabItem tab : files.getItems()) {
			if (tab.getText().equals(file)) {
				files.setSelection(tab);
			}
		}
	}

	/** A line of text to fill in. */
	final Text text(String label, String initial, String explanation) {
		label(fields, label);
		Text text = new Text(fields, SWT.BORDER);
		text.setText(initial);
		text.setMessage(explanation);
		text.setToolTipText(explanation);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
		text.addModifyListener(event -> changed());
		return text;
	}

	/** A choice among a few. */
	final Combo combo(String label, List<String> choices) {
		label(fields, label);
		Combo combo = new Combo(fields, SWT.READ_ONLY);
		combo.setItems(choices.toArray(String[]::new));
		if (!choices.isEmpty()) {
			combo.select(0);
		}
		GridDataFactory.fillDefaults().grab(true, false).applyTo(combo);
		combo.addModifyListener(event -> changed());
		return combo;
	}

	/** What is asked, at the left of the top of something high. */
	static void labelOfHigh(Composite parent, String text) {
		GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).indent(0, 4).applyTo(label(parent, text));
	}

	/** What is asked, at the left of where it is answered. */
	static Label label(Composite parent, String text) {
		Label label = new Label(parent, SWT.NONE);
		label.setText(text + ":");
		GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(label);
		return label;
	}
}
