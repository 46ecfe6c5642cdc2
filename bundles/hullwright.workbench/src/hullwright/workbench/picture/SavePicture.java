/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.picture;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/**
 * Saves the picture of the view at hand, and without one the drawing of the network, which is shown for that.
 */
public final class SavePicture extends AbstractHandler {

	private static final String NETWORK_VIEW = "hullwright.workbench.network";

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
		try {
			PictureView view = HandlerUtil.getActivePart(event) instanceof PictureView active ? active : (PictureView) page.showView(NETWORK_VIEW);
			if (view.canvas().scene().isEmpty()) {
				MessageDialog.openInformation(view.getSite().getShell(), "Save picture", "There is no picture yet. Open a .hull file with a series.");
			} else {
				PictureExport.ask(view.getSite().getShell(), view.canvas());
			}
		} catch (PartInitException e) {
			throw new ExecutionException("The drawing could not be shown.", e);
		}
		return null;
	}
}
