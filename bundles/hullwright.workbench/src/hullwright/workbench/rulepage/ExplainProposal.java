/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.rulepage;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * Leads from a finding in the text to the page of its rule. It changes nothing.
 */
public final class ExplainProposal implements ICompletionProposal {

	private final String rule;
	private final String finding;

	/**
	 * @param rule the id of the rule
	 * @param finding what was found
	 */
	public ExplainProposal(String rule, String finding) {
		this.rule = rule;
		this.finding = finding;
	}

	@Override
	public void apply(IDocument document) {
		try {
			((RulePagesView) PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(RulePagesView.ID)).explain(rule);
		} catch (CoreException e) {
			StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
		}
	}

	@Override
	public String getDisplayString() {
		return "Explain " + rule + " (F1)";
	}

	@Override
	public String getAdditionalProposalInfo() {
		return finding + "\n\nThe page of the rule says why it matters, which limit is in force and how to mend it.";
	}

	@Override
	public Point getSelection(IDocument document) {
		return null;
	}

	@Override
	public Image getImage() {
		return null;
	}

	@Override
	public IContextInformation getContextInformation() {
		return null;
	}
}
