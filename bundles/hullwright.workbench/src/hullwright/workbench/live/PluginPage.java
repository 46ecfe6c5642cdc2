/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.lang.ide.PluginTrust;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.part.EditorPart;

/**
 * What is shown of a plugin with rules of the house in place of its bytes: what it is, and what can be done about it.
 */
public final class PluginPage extends EditorPart {

	/** The id under which plugin.xml declares it. */
	static final String ID = "hullwright.workbench.pluginPage";

	private Button trust;

	@Override
	public void init(IEditorSite site, IEditorInput input) {
		setSite(site);
		setInput(input);
		setPartName(input.getName());
	}

	@Override
	public void createPartControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().margins(24, 20).spacing(0, 10).applyTo(page);
		Optional<Path> jar = Optional.ofNullable(Adapters.adapt(getEditorInput(), IFile.class)).flatMap(FileUris::path);
		if (jar.isEmpty()) {
			line(page, "This plugin is not on this machine.");
			return;
		}
		PluginTrust plugin = PluginTrust.in(jar.get());
		Label title = line(page, "Rules of the house: " + plugin.title());
		title.setFont(JFaceResources.getHeaderFont());
		line(page, plugin.refusal().map(why -> "It cannot be used: " + why)
				.orElse("A plugin runs its code with your rights. It is off until you trust it, and then runs in all your projects."));
		line(page, "Rules: " + String.join(", ", plugin.rules()));
		line(page, "SHA-256: " + plugin.sha256());
		line(page, "A plugin is no text. To change what it finds, change its source and build it anew; to keep it off, leave it as it is or delete the file.");
		trust = new Button(page, SWT.PUSH);
		trust.setText("Trust this plugin\u2026");
		trust.setEnabled(plugin.refusal().isEmpty());
		trust.addListener(SWT.Selection, event -> new TrustPlugin(jar.get()).run(null));
	}

	private static Label line(Composite page, String text) {
		Label label = new Label(page, SWT.WRAP);
		label.setText(text);
		GridDataFactory.fillDefaults().grab(true, false).hint(500, SWT.DEFAULT).applyTo(label);
		return label;
	}

	@Override
	public void setFocus() {
		if (trust != null) {
			trust.setFocus();
		}
	}

	@Override
	public boolean isDirty() {
		return false;
	}

	@Override
	public boolean isSaveAsAllowed() {
		return false;
	}

	@Override
	public void doSave(IProgressMonitor monitor) {
		// nothing can be changed
	}

	@Override
	public void doSaveAs() {
		// nothing can be changed
	}
}
