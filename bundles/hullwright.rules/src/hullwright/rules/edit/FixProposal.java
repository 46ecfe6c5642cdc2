/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import java.util.List;

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

	/** A text after the changes, all of which are taken to be in it. */
	public String appliedTo(String text) {
		StringBuilder changed = new StringBuilder(text);
		for (int at = changes.size() - 1; at >= 0; at--) {
			TextChange change = changes.get(at);
			changed.replace(change.offset(), change.offset() + change.length(), change.replacement());
		}
		return changed.toString();
	}
}
