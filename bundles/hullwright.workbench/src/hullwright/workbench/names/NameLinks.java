/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.names;

import hullwright.workbench.editor.HullText;
import java.util.Optional;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.hyperlink.AbstractHyperlinkDetector;
import org.eclipse.jface.text.hyperlink.IHyperlink;

/**
 * Makes each name a link to its declaration, for the pointer and for the key. Whether it has one is asked when it is followed,
 * since the pointer does not wait.
 */
public final class NameLinks extends AbstractHyperlinkDetector {

	@Override
	public IHyperlink[] detectHyperlinks(ITextViewer viewer, IRegion region, boolean several) {
		IDocument document = viewer.getDocument();
		Optional<IRegion> word = HullText.nameAt(document, region.getOffset());
		return word.flatMap(name -> NamePlace.in(document, name.getOffset())
				.map(place -> new IHyperlink[] { new ToDeclaration(name, place) })).orElse(null);
	}

}
