/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.catalog;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/**
 * Shows the catalogs with what plugs into the part at the cursor, ready to choose one.
 */
public final class InsertPart extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		try {
			CatalogView view = (CatalogView) HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().showView(CatalogView.ID);
			view.lookForWhatFits();
		} catch (PartInitException e) {
			throw new ExecutionException("The catalogs cannot be shown.", e);
		}
		return null;
	}
}
