/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import hullwright.lang.HullLanguage;
import hullwright.lang.edit.BackboneText;
import hullwright.lang.edit.TextEdit;
import hullwright.lang.imports.VisibleCatalogs;
import hullwright.network.Origin;
import hullwright.rules.edit.AddToBackbone;
import hullwright.rules.edit.EditIntent;
import hullwright.rules.edit.Fix;
import hullwright.rules.edit.FixProposal;
import hullwright.rules.edit.ReplaceText;
import hullwright.rules.edit.TextChange;
import hullwright.rules.report.Occurrence;
import hullwright.rules.report.ReportedFinding;
import hullwright.spec.Backbone;
import hullwright.spec.SpecFile;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.xtext.EcoreUtil2;

/**
 * Turns what a fix wants into changes of text. The caller holds the lock that guards reading.
 */
final class FixRendering {

	private final ReadProject project;

	FixRendering(ReadProject project) {
		this.project = project;
	}

	/** The fixes of a finding that can be rendered. */
	List<FixProposal> render(ReportedFinding reported) {
		List<FixProposal> proposals = new ArrayList<>();
		for (Fix fix : reported.finding().fixes()) {
			List<TextChange> changes = new ArrayList<>();
			for (EditIntent intent : fix.intents()) {
				render(intent, reported.occurrence()).ifPresent(changes::add);
			}
			if (changes.size() == fix.intents().size()) {
				changes.sort(Comparator.comparing(TextChange::file).thenComparing(TextChange::offset));
				proposals.add(new FixProposal(fix.title(), fix.reach(), changes));
			}
		}
		return proposals;
	}

	private Optional<TextChange> render(EditIntent intent, Occurrence occurrence) {
		if (intent instanceof ReplaceText replace) {
			Origin place = replace.place();
			return Optional.of(new TextChange(place.file(), place.offset(), place.length(), replace.replacement()));
		}
		boolean onHullsOnly = !occurrence.onAll() && occurrence.condition().isEmpty();
		return onHullsOnly || !(intent instanceof AddToBackbone add) ? Optional.empty() : add(add, occurrence.condition());
	}

	private Optional<TextChange> add(AddToBackbone add, String condition) {
		String file = add.backbone().file();
		return backboneAt(add.backbone())
				.map(backbone -> new BackboneText(backbone, HullLanguage.services().getInstance(VisibleCatalogs.class)))
				.flatMap(text -> text.add(add.end() == AddToBackbone.End.START, add.keyword(), add.name(), add.part().catalog(), add.part().name(), condition))
				.map((TextEdit edit) -> new TextChange(file, edit.offset(), edit.length(), edit.replacement()));
	}

	private Optional<Backbone> backboneAt(Origin origin) {
		SpecFile file = project.files().get(origin.file());
		TextOrigins places = new TextOrigins();
		return file == null ? Optional.empty() : EcoreUtil2.getAllContentsOfType(file, Backbone.class).stream()
				.filter(backbone -> places.of(backbone, origin.element()).offset() == origin.offset())
				.findFirst();
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
