/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import java.util.Map;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceLocator;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.swt.graphics.Image;

/**
 * Icons by the kind that the server gives a name. Kept until it is disposed of.
 */
final class OutlineIcons {

	private static final Map<SymbolKind, String> FILES = Map.of(
			SymbolKind.Class, "icons/boat.png",
			SymbolKind.Interface, "icons/network.png",
			SymbolKind.Object, "icons/part.png",
			SymbolKind.Struct, "icons/part.png",
			SymbolKind.Constant, "icons/boats.png",
			SymbolKind.Package, "icons/catalog.png");

	private final LocalResourceManager images = new LocalResourceManager(JFaceResources.getResources());

	/** The icon of a kind; null for what needs none. */
	Image of(SymbolKind kind) {
		String file = FILES.get(kind);
		return file == null ? null : ResourceLocator.imageDescriptorFromBundle("hullwright.workbench", file).map(images::create).orElse(null);
	}

	void dispose() {
		images.dispose();
	}
}
