/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A fix as changes of text, tried: it removes its finding and adds none that is worse.
 *
 * @param title what it does, for people
 * @param reach whether the boat stays the same
 * @param changes the changes, none overlapping another, in the order of file and offset
 */
public record FixProposal(String title, Fix.Reach reach, List<TextChange> changes) {

	public FixProposal {
		changes = List.copyOf(changes);
	}

	/** The files that it changes. */
	public SortedSet<String> files() {
		return changes.stream().map(TextChange::file).collect(Collectors.toCollection(TreeSet::new));
	}

	/** The text of a file after the changes that concern it. */
	public String appliedTo(String file, String text) {
		StringBuilder changed = new StringBuilder(text);
		for (int at = changes.size() - 1; at >= 0; at--) {
			TextChange change = changes.get(at);
			if (!change.file().equals(file)) {
				continue;
			}
			changed.replace(change.offset(), change.offset() + change.length(), change.replacement());
		}
		return changed.toString();
	}
}
