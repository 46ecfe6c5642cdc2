/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.picture;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.ui.actions.ActionFactory;

/**
 * What can be done with a picture: look closer, fit it in, save it, print it.
 */
public final class PictureActions {

	private PictureActions() {
	}

	/** Adds them to the bars of a view. */
	public static void addTo(PictureView view) {
		IToolBarManager bar = view.getViewSite().getActionBars().getToolBarManager();
		IMenuManager menu = view.getViewSite().getActionBars().getMenuManager();
		Action closer = action("Zoom in", "+", "icons/zoom-in.png", view.canvas()::zoomIn);
		Action farther = action("Zoom out", "-", "icons/zoom-out.png", view.canvas()::zoomOut);
		Action fit = action("Fit in", "0", "icons/fit-in.png", view.canvas()::fit);
		Action natural = action("Natural size", "1", null, view.canvas()::naturalSize);
		Action save = action("Save picture as\u2026", "", "icons/save-picture.png", () -> PictureExport.ask(view.getSite().getShell(), view.canvas()));
		Action print = action("Print picture\u2026", "", null, () -> PicturePrint.ask(view.getSite().getShell(), view.canvas()));
		view.getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.PRINT.getId(), print);
		for (Action each : new Action[] { closer, farther, fit, save }) {
			bar.add(each);
		}
		for (Action each : new Action[] { closer, farther, fit, natural }) {
			menu.add(each);
		}
		menu.add(new Separator());
		menu.add(save);
		menu.add(print);
	}

	private static Action action(String name, String key, String icon, Runnable run) {
		Action action = new Action(key.isEmpty() ? name : name + "\t" + key) {
			@Override
			public void run() {
				run.run();
			}
		};
		action.setToolTipText(key.isEmpty() ? name : name + " (" + key + ")");
		if (icon != null) {
			ResourceLocator.imageDescriptorFromBundle("hullwright.workbench", icon).ifPresent(action::setImageDescriptor);
		}
		return action;
	}
}
