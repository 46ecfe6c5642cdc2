/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.names;

import hullwright.workbench.live.Question;
import hullwright.workbench.live.TextPlaces;
import java.util.List;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.hyperlink.IHyperlink;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * The way from a name to where it is declared, which may be another file or a built-in catalog.
 */
final class ToDeclaration implements IHyperlink {

	private final IRegion name;
	private final NamePlace place;

	ToDeclaration(IRegion name, NamePlace place) {
		this.name = name;
		this.place = place;
	}

	@Override
	public IRegion getHyperlinkRegion() {
		return name;
	}

	@Override
	public String getTypeLabel() {
		return null;
	}

	@Override
	public String getHyperlinkText() {
		return "Go to declaration";
	}

	@Override
	public void open() {
		IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
		Job.create("Looking for the declaration", (IProgressMonitor monitor) -> {
			List<? extends Location> found = new Question<>(
					server -> server.getTextDocumentService().definition(new DefinitionParams(place.file(), place.position()))).ask(monitor).getLeft();
			PlatformUI.getWorkbench().getDisplay().asyncExec(() -> show(page, found));
		}).schedule();
	}

	private static void show(IWorkbenchPage page, List<? extends Location> found) {
		if (found.isEmpty()) {
			say(page, "Nothing of this name is declared");
			return;
		}
		try {
			TextPlaces.open(page, found.get(0));
		} catch (PartInitException e) {
			StatusManager.getManager().handle((CoreException) e, "hullwright.workbench");
		}
	}

	private static void say(IWorkbenchPage page, String sentence) {
		if (page.getActiveEditor() != null && page.getActiveEditor().getSite() instanceof IEditorSite site) {
			site.getActionBars().getStatusLineManager().setMessage(sentence);
		}
	}
}
