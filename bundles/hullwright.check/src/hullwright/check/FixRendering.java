/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.rules.edit.EditIntent;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.FixProposal;
import hullwright.rules.edit.TextChange;
import hullwright.rules.report.ReportedFinding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Turns what a fix wants into changes of text. The caller holds the lock that guards reading.
 */
final class FixRendering {

	private final IntentRendering intents;

	FixRendering(ReadProject project) {
		intents = new IntentRendering(project);
	}

	/** The fixes of a finding that can be rendered. */
	List<FixProposal> render(ReportedFinding reported) {
		List<FixProposal> proposals = new ArrayList<>();
		for (Fix fix : reported.finding().fixes()) {
			List<TextChange> changes = new ArrayList<>();
			boolean complete = true;
			for (EditIntent intent : fix.intents()) {
				List<TextChange> written = intents.render(intent, reported.occurrence());
				complete &= !written.isEmpty();
				changes.addAll(written);
			}
			if (complete) {
				changes.sort(Comparator.comparing(TextChange::file).thenComparing(TextChange::offset));
				proposals.add(new FixProposal(fix.title(), fix.reach(), changes));
			}
		}
		return proposals;
	}

	/** The snapshot after the changes of a proposal. */
	static Snapshot apply(Snapshot snapshot, FixProposal proposal) {
		Snapshot changed = snapshot;
		for (String file : proposal.files()) {
			changed = changed.with(file, proposal.appliedTo(file, snapshot.text(file).orElse("")));
		}
		return changed;
	}
}
