/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.editor;

import hullwright.workbench.live.LanguageService;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.ITypedRegion;
import org.eclipse.jface.text.TextAttribute;
import org.eclipse.jface.text.TextUtilities;
import org.eclipse.jface.text.rules.IToken;
import org.eclipse.jface.text.rules.Token;
import org.eclipse.swt.custom.StyleRange;

/**
 * The colours of a piece of text, for places that are no editor.
 */
public final class ColouredText {

	private ColouredText() {
	}

	/** The styles of a text, in order and counted from its start. To be called by the UI thread. */
	public static List<StyleRange> styles(String text) {
		Document document = new Document(text);
		new HullPartitions().setup(document);
		HullWordScanner words = new HullWordScanner(() -> LanguageService.get().keywords().getNow(Set.of()), name -> HullWordScanner.Kind.OTHER,
				kind -> new Token(HullColours.of(kind)));
		List<StyleRange> styles = new ArrayList<>();
		try {
			for (ITypedRegion part : TextUtilities.computePartitioning(document, HullPartitions.PARTITIONING, 0, text.length(), false)) {
				if (HullPartitions.COMMENT.equals(part.getType())) {
					add(styles, part.getOffset(), part.getLength(), HullColours.comment());
				} else if (HullPartitions.STRING.equals(part.getType())) {
					add(styles, part.getOffset(), part.getLength(), HullColours.string());
				} else {
					words.setRange(document, part.getOffset(), part.getLength());
					for (IToken token = words.nextToken(); !token.isEOF(); token = words.nextToken()) {
						if (token.getData() instanceof TextAttribute attribute) {
							add(styles, words.getTokenOffset(), words.getTokenLength(), attribute);
						}
					}
				}
			}
		} catch (BadLocationException e) {
			// the partitions are those of this very text
			throw new IllegalStateException(e);
		}
		return styles;
	}

	private static void add(List<StyleRange> styles, int offset, int length, TextAttribute attribute) {
		styles.add(new StyleRange(offset, length, attribute.getForeground(), null, attribute.getStyle()));
	}
}
