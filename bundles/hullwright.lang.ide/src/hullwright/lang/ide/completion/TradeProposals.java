/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.completion;

import com.google.inject.Inject;
import hullwright.resolve.OpenEnd;
import hullwright.spec.PortReference;
import hullwright.spec.SpecPackage;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.xtext.Assignment;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.Keyword;
import org.eclipse.xtext.RuleCall;
import org.eclipse.xtext.documentation.IEObjectDocumentationProvider;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistEntry;
import org.eclipse.xtext.ide.editor.contentassist.IIdeContentProposalAcceptor;
import org.eclipse.xtext.ide.editor.contentassist.IdeContentProposalProvider;
import org.eclipse.xtext.scoping.IScope;

/**
 * Completion that knows the trade.
 */
public class TradeProposals extends IdeContentProposalProvider {

	private static final int PORT = 600;
	private static final int UNIT = 600;
	private static final int STATEMENT = 200;

	@Inject
	private IEObjectDocumentationProvider declarations;

	@Override
	protected void _createProposals(CrossReference reference, ContentAssistContext context, IIdeContentProposalAcceptor acceptor) {
		EReference asked = GrammarUtil.getReference(reference);
		EObject place = context.getCurrentModel();
		if (asked == null || place == null || !(reference.getType().getClassifier() instanceof EClass kind)) {
			return;
		}
		IScope scope = getScopeProvider().getScope(place, asked);
		offer(new NamesOnOffer(scope, getScopeProvider().getScope(place, SpecPackage.Literals.CHANGE_ITEM__TYPE), kind,
				"PortReference".equals(GrammarUtil.containingRule(reference).getName()), declarations).at(place, asked, context.getOffset(), context.getPrefix()), ContentAssistEntry.KIND_REFERENCE,
				context, acceptor);
	}

	@Override
	protected void _createProposals(Assignment assignment, ContentAssistContext context, IIdeContentProposalAcceptor acceptor) {
		if ("port".equals(assignment.getFeature()) && assignment.getTerminal() instanceof RuleCall && written(context) != null) {
			offer(FreePorts.of(written(context), new OpenEnd()).entrySet().stream()
					.map(port -> new Candidate(String.valueOf(port.getKey()), port.getValue(), null, PORT - port.getKey())).toList(),
					ContentAssistEntry.KIND_VALUE, context, acceptor);
		} else {
			super._createProposals(assignment, context, acceptor);
		}
	}

	/** The grammar takes a quantity for one word, so it does not tell that a unit may follow. */
	@Override
	public void createProposals(Collection<ContentAssistContext> contexts, IIdeContentProposalAcceptor acceptor) {
		for (ContentAssistContext context : contexts) {
			offer(UnitsHere.behind(context.getLastCompleteNode()).stream().map(unit -> new Candidate(unit.symbol(),
					unit.name().toLowerCase(Locale.ROOT).replace('_', ' '), null, UNIT - unit.ordinal())).toList(), ContentAssistEntry.KIND_UNIT, context, acceptor);
		}
		super.createProposals(contexts, acceptor);
	}

	private static PortReference written(ContentAssistContext context) {
		return context.getCurrentModel() instanceof PortReference current ? current
				: context.getPreviousModel() instanceof PortReference previous ? previous : null;
	}

	/** Words only: whoever wants a brace types it. */
	@Override
	protected boolean filterKeyword(Keyword keyword, ContentAssistContext context) {
		return Character.isLetter(keyword.getValue().charAt(0)) && super.filterKeyword(keyword, context);
	}

	@Override
	protected void _createProposals(Keyword keyword, ContentAssistContext context, IIdeContentProposalAcceptor acceptor) {
		super._createProposals(keyword, context, acceptor);
		for (WholeStatements.Statement statement : WholeStatements.beginningWith(keyword)) {
			if (keyword.getValue().startsWith(context.getPrefix()) && acceptor.canAcceptMoreProposals()) {
				ContentAssistEntry entry = new Candidate(statement.text(), statement.title(), null, STATEMENT).entry(context.getPrefix(), ContentAssistEntry.KIND_SNIPPET);
				entry.setLabel(statement.label());
				acceptor.accept(entry, STATEMENT);
			}
		}
	}

	private static void offer(List<Candidate> candidates, String kind, ContentAssistContext context, IIdeContentProposalAcceptor acceptor) {
		for (Candidate candidate : candidates) {
			if (candidate.suits(context.getPrefix()) && acceptor.canAcceptMoreProposals()) {
				acceptor.accept(candidate.entry(context.getPrefix(), kind), candidate.weight());
			}
		}
	}
}
