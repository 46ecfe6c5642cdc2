/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/**
 * Changes the words that are said of an element outside of braces. Comments between the words stay where they are not replaced.
 */
public final class WordsText {

	private static final String CONDITION = "when";

	private WordsText() {
	}

	/** Exchanges words; empty if the element does not say them. */
	public static Optional<TextEdit> change(EObject element, String old, String words) {
		List<ILeafNode> said = StreamSupport.stream(NodeModelUtils.findActualNodeFor(element).getLeafNodes().spliterator(), false)
				.filter(leaf -> !leaf.isHidden()).toList();
		return old.isEmpty() ? Optional.of(added(said, words)) : exchanged(said, Arrays.asList(old.split("\\s+")), words);
	}

	private static TextEdit added(List<ILeafNode> said, String words) {
		for (int i = 1; i < said.size(); i++) {
			if (said.get(i).getText().equals(CONDITION)) {
				return new TextEdit(said.get(i - 1).getEndOffset(), 0, " " + words);
			}
		}
		return new TextEdit(said.get(said.size() - 1).getEndOffset(), 0, " " + words);
	}

	private static Optional<TextEdit> exchanged(List<ILeafNode> said, List<String> old, String words) {
		for (int at = 1; at + old.size() <= said.size(); at++) {
			if (said.subList(at, at + old.size()).stream().map(ILeafNode::getText).toList().equals(old)) {
				// what is taken away takes the blank before it along
				int start = words.isEmpty() ? said.get(at - 1).getEndOffset() : said.get(at).getOffset();
				return Optional.of(new TextEdit(start, said.get(at + old.size() - 1).getEndOffset() - start, words));
			}
		}
		return Optional.empty();
	}
}
