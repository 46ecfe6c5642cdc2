/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.rulepage;

import hullwright.workbench.live.FindingsAtWork;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/**
 * Shows the page of the rule behind the finding that is selected, or that stands at the cursor; the list of rules if there is none.
 */
public final class ExplainRule extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
		Optional<String> rule = FindingsAtWork.rule(page, HandlerUtil.getCurrentSelection(event));
		try {
			RulePagesView view = (RulePagesView) page.showView(RulePagesView.ID);
			rule.ifPresent(view::explain);
		} catch (PartInitException e) {
			throw new ExecutionException("The pages of the rules cannot be shown.", e);
		}
		return null;
	}
}
