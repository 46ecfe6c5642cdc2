/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.export;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/**
 * Asks of which project, in which form and where a report is wanted.
 */
final class ExportPage extends WizardPage {

	private final List<IProject> projects = Arrays.stream(ResourcesPlugin.getWorkspace().getRoot().getProjects()).filter(IProject::isOpen).toList();
	private final Optional<IProject> chosen;
	private Combo project;
	private Combo form;
	private Text file;
	private String proposed = "";

	ExportPage(Optional<IProject> chosen) {
		super("findings");
		setTitle("Report of findings");
		setDescription("What is found on every boat that can be ordered and on every sold hull, as the texts are saved.");
		this.chosen = chosen;
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(3).margins(10, 10).spacing(12, 8).applyTo(page);
		project = combo(page, "Project:", projects.stream().map(IProject::getName).toList());
		project.select(Math.max(0, chosen.map(projects::indexOf).orElse(0)));
		form = combo(page, "Form:", Arrays.stream(ReportForm.values()).map(ReportForm::label).toList());
		form.select(0);
		new Label(page, SWT.NONE).setText("File:");
		file = new Text(page, SWT.BORDER);
		GridDataFactory.fillDefaults().grab(true, false).hint(420, SWT.DEFAULT).applyTo(file);
		Button browse = new Button(page, SWT.PUSH);
		browse.setText("Choose\u2026");
		browse.addListener(SWT.Selection, event -> browse());
		file.addModifyListener(event -> judge());
		propose();
		setControl(page);
		judge();
	}

	private Combo combo(Composite page, String label, List<String> choices) {
		new Label(page, SWT.NONE).setText(label);
		Combo combo = new Combo(page, SWT.READ_ONLY);
		combo.setItems(choices.toArray(String[]::new));
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(combo);
		combo.addListener(SWT.Selection, event -> propose());
		return combo;
	}

	/** Proposes a file in the home folder, unless somebody wrote another. */
	private void propose() {
		if (file != null && !projects.isEmpty() && (file.getText().equals(proposed) || file.getText().isEmpty())) {
			proposed = Path.of(System.getProperty("user.home"), project().getName() + "-findings." + form().extension()).toString();
			file.setText(proposed);
		}
	}

	private void browse() {
		FileDialog dialog = new FileDialog(getShell(), SWT.SAVE | SWT.SHEET);
		dialog.setOverwrite(true);
		dialog.setFileName(file.getText());
		dialog.setFilterExtensions(new String[] { "*." + form().extension(), "*" });
		String named = dialog.open();
		if (named != null) {
			file.setText(named);
		}
	}

	private void judge() {
		Optional<String> problem = problem();
		setErrorMessage(problem.orElse(null));
		setPageComplete(problem.isEmpty());
		setMessage(problem.isEmpty() && Files.exists(path()) ? "The file is there already and will be replaced." : null, WARNING);
	}

	private Optional<String> problem() {
		if (projects.isEmpty()) {
			return Optional.of("There is no open project to report on.");
		}
		try {
			if (file.getText().isBlank() || !path().isAbsolute()) {
				return Optional.of("Name the file with its folder.");
			}
			if (Files.isDirectory(path())) {
				return Optional.of(path() + " is a folder. Name a file in it.");
			}
			return Files.isDirectory(path().getParent()) ? Optional.empty() : Optional.of("There is no folder " + path().getParent() + ".");
		} catch (InvalidPathException e) {
			return Optional.of("That is no name of a file: " + e.getReason());
		}
	}

	IProject project() {
		return projects.get(project.getSelectionIndex());
	}

	ReportForm form() {
		return ReportForm.values()[form.getSelectionIndex()];
	}

	Path path() {
		return Path.of(file.getText().strip());
	}
}
