/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.dialogs.PreferenceLinkArea;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.ui.preferences.IWorkbenchPreferenceContainer;

/**
 * Says where the things are that people look for. What a project allows is no preference: it stands in its profile.
 */
public final class MainPreferences extends PreferencePage implements IWorkbenchPreferencePage {

	@Override
	public void init(IWorkbench workbench) {
		noDefaultAndApplyButton();
		setDescription("Limits and severities belong to the project: they are written in its profile, in a .hull file, so that "
				+ "everybody who opens the project gets the same findings.");
	}

	@Override
	protected Control createContents(Composite parent) {
		Composite links = new Composite(parent, SWT.NONE);
		links.setLayout(new GridLayout());
		link(links, "org.eclipse.ui.preferencePages.ColorsAndFonts", "Colours and font of the text: <a>{0}</a>");
		link(links, "org.eclipse.ui.preferencePages.GeneralTextEditor", "Line numbers, tabs and margins: <a>{0}</a>");
		link(links, "org.eclipse.ui.preferencePages.Views", "Light or dark: <a>{0}</a>");
		link(links, "org.eclipse.ui.preferencePages.Keys", "Keys: <a>{0}</a>");
		return links;
	}

	private void link(Composite parent, String page, String text) {
		new PreferenceLinkArea(parent, SWT.NONE, page, text, (IWorkbenchPreferenceContainer) getContainer(), null);
	}
}
