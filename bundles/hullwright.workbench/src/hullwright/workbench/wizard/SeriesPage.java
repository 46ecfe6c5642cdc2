/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.lang.ide.starter.Names;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

/**
 * Asks for a new series and the file that it goes into. The name of the file follows the title until somebody writes another.
 */
final class SeriesPage extends DraftPage {

	private final List<IProject> projects = openProjects();
	private final Optional<IProject> chosen;
	private Combo project;
	private SeriesFields series;
	private Text file;
	private boolean ownFile;

	SeriesPage(Optional<IProject> chosen) {
		super("series", "New series", "A file with one network that works. Everything in it can be changed in the text.");
		this.chosen = chosen;
	}

	/** The projects that a file can go into. */
	static List<IProject> openProjects() {
		return Arrays.stream(ResourcesPlugin.getWorkspace().getRoot().getProjects()).filter(IProject::isOpen).toList();
	}

	@Override
	void createFields(Composite parent) {
		project = combo("Project", projects.stream().map(IProject::getName).toList());
		chosen.ifPresent(each -> project.select(projects.indexOf(each)));
		series = new SeriesFields(this, parent);
		file = text("File", "new-boat.hull", "Ends in .hull");
		file.addModifyListener(event -> ownFile |= !file.getText().equals(Names.file(series.first().getText())));
		series.first().addModifyListener(event -> {
			if (!ownFile) {
				file.setText(Names.file(series.first().getText()));
			}
		});
	}

	@Override
	Optional<String> problem() {
		if (projects.isEmpty()) {
			return Optional.of("There is no open project. File, New, Yard project makes one.");
		}
		return series.problem().or(() -> problem(target(), file.getText().strip()));
	}

	/** Why there can be no new file of a name, in a sentence. */
	static Optional<String> problem(IFile target, String name) {
		IWorkspace workspace = ResourcesPlugin.getWorkspace();
		IStatus valid = workspace.validateName(name, IResource.FILE);
		if (!valid.isOK()) {
			return Optional.of(valid.getMessage());
		}
		if (!name.endsWith(".hull") || name.equals(".hull")) {
			return Optional.of("The name of the file must end in .hull, such as new-boat.hull.");
		}
		return target.exists() ? Optional.of("There is a file '" + name + "' in this project already. Take another name.") : Optional.empty();
	}

	/** The file that will be written. */
	IFile target() {
		return projects.get(project.getSelectionIndex()).getFile(file.getText().isBlank() ? "unnamed.hull" : file.getText().strip());
	}

	@Override
	Map<String, String> texts() {
		return Map.of(target().getName(), series.series().text());
	}

	@Override
	public void setVisible(boolean visible) {
		super.setVisible(visible);
		if (visible) {
			series.first().setFocus();
			series.first().selectAll();
		}
	}
}
