/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.catalog;

import hullwright.lang.ide.EditorLanguage;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;

/**
 * Whether a change of the workspace is about texts.
 */
final class HullFiles {

	private HullFiles() {
	}

	/** Whether a .hull file came, went or has another content. */
	static boolean changed(IResourceChangeEvent event) {
		AtomicBoolean changed = new AtomicBoolean();
		try {
			event.getDelta().accept(part -> {
				boolean text = part.getResource().getType() == IResource.FILE && EditorLanguage.FILE_EXTENSION.equals(part.getResource().getFileExtension());
				if (text && (part.getKind() != IResourceDelta.CHANGED || (part.getFlags() & IResourceDelta.CONTENT) != 0)) {
					changed.set(true);
				}
				return !changed.get();
			});
		} catch (CoreException e) {
			ILog.of(HullFiles.class).log(e.getStatus());
		}
		return changed.get();
	}
}
