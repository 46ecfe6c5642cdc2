/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.eclipse.core.resources.IEncodedStorage;
import org.eclipse.core.resources.IStorage;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.Path;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.core.runtime.PlatformObject;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPersistableElement;
import org.eclipse.ui.IStorageEditorInput;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;

/**
 * A text of the language that is in no file, such as a built-in catalog: shown in an editor that cannot change it.
 */
public final class ReadOnlyText extends PlatformObject implements IStorageEditorInput, IEncodedStorage {

	private static final String EDITOR = "org.eclipse.ui.genericeditor.GenericEditor";

	private final String name;
	private final String text;

	private ReadOnlyText(String name, String text) {
		this.name = name;
		this.text = text;
	}

	/**
	 * Shows a text.
	 *
	 * @param name what it is called, such as {@code standard:parts}; the same name is shown once
	 * @throws PartInitException if no editor can be opened
	 */
	public static IEditorPart open(IWorkbenchPage page, String name, String text) throws PartInitException {
		return page.openEditor(new ReadOnlyText(name, text), EDITOR);
	}

	@Override
	public IStorage getStorage() {
		return this;
	}

	@Override
	public InputStream getContents() {
		return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
	}

	@Override
	public String getCharset() {
		return StandardCharsets.UTF_8.name();
	}

	@Override
	public IPath getFullPath() {
		return null;
	}

	/** With the ending of the language, from which the editor knows what it shows. */
	@Override
	public String getName() {
		return new Path(name.substring(name.indexOf(':') + 1)).lastSegment() + ".hull";
	}

	@Override
	public boolean isReadOnly() {
		return true;
	}

	@Override
	public boolean exists() {
		return true;
	}

	@Override
	public ImageDescriptor getImageDescriptor() {
		return null;
	}

	@Override
	public IPersistableElement getPersistable() {
		return null;
	}

	@Override
	public String getToolTipText() {
		return name + ", which ships with Hullwright and cannot be changed";
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof ReadOnlyText text && text.name.equals(name);
	}

	@Override
	public int hashCode() {
		return name.hashCode();
	}
}
