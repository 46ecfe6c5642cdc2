/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.guide;

import java.util.List;
import org.eclipse.ui.PlatformUI;

/**
 * One step of a guide.
 *
 * @param title what is done
 * @param text what happens and why, with the mark-up of form texts
 * @param command the command that does it, as the platform writes commands with their parameters; empty if the person does it
 */
record Step(String title, String text, String command) {

	private static final String SHOW_VIEW = "org.eclipse.ui.views.showView(org.eclipse.ui.views.showView.viewId=";

	/** Whether this product has what the step shows. */
	boolean possible() {
		return !command.startsWith(SHOW_VIEW)
				|| PlatformUI.getWorkbench().getViewRegistry().find(command.substring(SHOW_VIEW.length(), command.length() - 1)) != null;
	}

	/** From nothing to a drawing and a report. */
	static final List<Step> FIRST_NETWORK = List.of(
			new Step("Make a project", "A project is a folder with a <b>profile</b>, the limits of the house, and the texts of its boats. Take \"A first network of "
					+ "your own\", give the boat a title on the next page, and press Finish. By hand: <b>File, New, Yard project</b>.",
					"org.eclipse.ui.newWizard(newWizardId=hullwright.workbench.new.project)"),
			new Step("Read the backbone", "In the text, <b>backbone of light</b> begins the main cable of the network, walked from end to end: a terminator, a block "
					+ "with four ports, the power tap, a terminator. Below it each <b>drop</b> hangs one device on a port. Put the cursor on the line of the block.", ""),
			new Step("Add a device", "The catalogs show what plugs into the part at the cursor. Write <b>rudder</b> in the field for words and press Return: the "
					+ "sensor goes on a free port. By hand: <b>Ctrl+Shift+I</b>.", "hullwright.workbench.insertPart"),
			new Step("Forget a terminator", "A network that lacks a terminator often works on the bench and fails at sea. Take the last one out: the text is marked "
					+ "as soon as you stop typing.", "hullwright.workbench.takeOutTerminator"),
			new Step("Read why it matters", "Put the cursor on the line that is marked. The page of the rule says why it matters, what the limit is and where that "
					+ "was read. By hand: <b>F1</b>.", "hullwright.workbench.explain"),
			new Step("Mend it", "Click into the line that is marked and press <b>Ctrl+1</b>. Choose to add the terminator: each change that is offered has been tried, "
					+ "and removes the finding without a new one as bad. Then save with <b>Ctrl+S</b>.", ""),
			new Step("Sell a hull", "A hull is a boat that is sold: a number, and the options that were ordered. By hand: <b>File, New, Hull</b>.",
					"org.eclipse.ui.newWizard(newWizardId=hullwright.workbench.new.hull)"),
			new Step("Look at the boat", "<b>Window, Show view, Network</b> draws the boat as its text stands, with what is left on each part.", SHOW_VIEW + "hullwright.workbench.network)"),
			new Step("Hand it on", "Save, and write a report of what is found on every boat, for the review. By hand: <b>File, Export, Report of findings</b>.",
					"org.eclipse.ui.file.export(exportWizardId=hullwright.workbench.export.findings)"));
}
