/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.lang.ide.PluginTrust;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.statushandlers.StatusManager;

/**
 * Lets the user trust a plugin of the project after seeing what it is.
 */
final class TrustPlugin implements IMarkerResolution {

	private final Path jar;

	TrustPlugin(Path jar) {
		this.jar = jar;
	}

	@Override
	public String getLabel() {
		return "Trust this plugin\u2026";
	}

	@Override
	public void run(IMarker marker) {
		PluginTrust trust = PluginTrust.in(jar);
		if (trust.refusal().isPresent()) {
			MessageDialog.openError(Display.getCurrent().getActiveShell(), "Trust plugin", trust.title() + " cannot be used: " + trust.refusal().get());
		} else if (isWanted(trust)) {
			give(trust);
		}
	}

	/** The safe answer is the one that Enter gives. */
	private boolean isWanted(PluginTrust trust) {
		String question = "Run the rules of " + trust.title() + " from now on, in all projects?\n\n"
				+ "Its code runs with your rights. Trust it only if you know who made it and how it came here.\n\n"
				+ "Rules: " + String.join(", ", trust.rules()) + "\nFile: " + jar.getFileName() + "\nSHA-256: " + trust.sha256();
		return new MessageDialog(Display.getCurrent().getActiveShell(), "Trust plugin", null, question, MessageDialog.QUESTION, 1,
				"Trust", IDialogConstants.CANCEL_LABEL).open() == 0;
	}

	private void give(PluginTrust trust) {
		try {
			trust.give();
			FileEvent changed = new FileEvent(FileUris.uri(jar), FileChangeType.Changed);
			LanguageService.get().send(server -> server.getWorkspaceService().didChangeWatchedFiles(new DidChangeWatchedFilesParams(List.of(changed))));
		} catch (IOException e) {
			StatusManager.getManager().handle(new Status(IStatus.ERROR, TrustPlugin.class,
					"The list of the plugins that you trust cannot be changed: " + e.getMessage(), e), StatusManager.SHOW);
		}
	}
}
