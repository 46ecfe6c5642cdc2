/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.lang.ide.EditorLanguage;
import org.eclipse.core.runtime.IAdapterFactory;
import org.eclipse.ui.texteditor.ITextEditor;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;

/**
 * Gives the generic editor an outline when it shows a .hull file.
 */
public final class HullOutlineFactory implements IAdapterFactory {

	@Override
	public <T> T getAdapter(Object adaptable, Class<T> type) {
		if (type == IContentOutlinePage.class && adaptable instanceof ITextEditor editor
				&& editor.getEditorInput().getName().endsWith("." + EditorLanguage.FILE_EXTENSION)) {
			return type.cast(new HullOutline(editor));
		}
		return null;
	}

	@Override
	public Class<?>[] getAdapterList() {
		return new Class<?>[] { IContentOutlinePage.class };
	}
}
