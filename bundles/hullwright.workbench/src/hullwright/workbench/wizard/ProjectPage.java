/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.wizard;

import hullwright.lang.ide.starter.Names;
import hullwright.lang.ide.starter.StarterProfile;
import hullwright.workbench.ExampleProject;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.List;
import org.eclipse.swt.widgets.Text;

/**
 * Asks what the project is called and what it begins with: texts of one's own, or an example.
 */
final class ProjectPage extends DraftPage {

	private static final int STARTER = 0;
	private static final int EXAMPLES = 2;

	private final java.util.List<ExampleProject> examples = ExampleProject.shipped();
	private Text name;
	private List start;
	private Label about;
	private boolean ownName;
	private boolean following;

	ProjectPage() {
		super("project", "New yard project", "A folder with the limits of the house, its boats and its parts.");
	}

	@Override
	void createFields(Composite parent) {
		name = text("Project", free("my-yard"), "The name of the folder");
		name.addModifyListener(event -> ownName |= !following);
		labelOfHigh(parent, "Begin with");
		start = new List(parent, SWT.BORDER | SWT.V_SCROLL | SWT.SINGLE);
		start.add("A first network of your own");
		start.add("The profile only");
		examples.forEach(example -> start.add("Example: " + example.name()));
		start.select(STARTER);
		GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, start.getItemHeight() * 6).applyTo(start);
		start.addListener(SWT.Selection, event -> chosen());
		labelOfHigh(parent, "What it is");
		about = new Label(parent, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).hint(300, about.computeSize(300, SWT.DEFAULT).y * 3).applyTo(about);
		describe();
	}

	private void chosen() {
		if (!ownName) {
			following = true;
			name.setText(free(example().map(ExampleProject::name).orElse("my-yard")));
			following = false;
		}
		describe();
		changed();
	}

	private void describe() {
		about.setText(example().map(ExampleProject::about).orElse(start.getSelectionIndex() == STARTER
				? "A profile with the standard limits, and a series with one block, its supply and a few devices. The next page asks for these."
				: "A profile with the standard limits. Boats and parts come by File, New."));
		about.requestLayout();
	}

	private static String free(String wished) {
		String name = wished;
		for (int number = 2; ResourcesPlugin.getWorkspace().getRoot().getProject(name).exists(); number++) {
			name = wished + "-" + number;
		}
		return name;
	}

	@Override
	Optional<String> problem() {
		IWorkspace workspace = ResourcesPlugin.getWorkspace();
		String wished = name.getText().strip();
		if (wished.isEmpty()) {
			return Optional.of("The project needs a name.");
		}
		IStatus valid = workspace.validateName(wished, IResource.PROJECT);
		if (!valid.isOK()) {
			return Optional.of(valid.getMessage());
		}
		IProject project = workspace.getRoot().getProject(wished);
		if (project.exists()) {
			return Optional.of("There is a project '" + wished + "' already. Take another name.");
		}
		return workspace.getRoot().getLocation().append(wished).toFile().exists()
				? Optional.of("There is a folder '" + wished + "' in " + workspace.getRoot().getLocation().toOSString()
						+ " already. File, Open folder… makes a project of it.")
				: Optional.empty();
	}

	@Override
	Map<String, String> texts() {
		Map<String, String> texts = new LinkedHashMap<>();
		example().ifPresentOrElse(example -> texts.putAll(example.texts()), () -> texts.put("yard.hull", profile()));
		return texts;
	}

	/** The profile of a project that is no copy of an example. */
	String profile() {
		String house = Names.from(name.getText());
		return new StarterProfile(Names.problem("", house).isEmpty() ? house : "Yard", "Limits of the house").text();
	}

	/** The name of the project. */
	String project() {
		return name.getText().strip();
	}

	/** The example that is to be copied, if one is chosen. */
	Optional<ExampleProject> example() {
		int at = start.getSelectionIndex() - EXAMPLES;
		return at >= 0 ? Optional.of(examples.get(at)) : Optional.empty();
	}

	/** Whether the next page is wanted, which asks for a first series. */
	boolean wantsSeries() {
		return start == null || start.getSelectionIndex() == STARTER;
	}

	@Override
	public void setVisible(boolean visible) {
		super.setVisible(visible);
		if (visible) {
			name.setFocus();
			name.selectAll();
		}
	}

	@Override
	public boolean canFlipToNextPage() {
		return isPageComplete() && wantsSeries();
	}
}
