/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import com.google.inject.Inject;
import hullwright.spec.Titled;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.CrossReference;
import org.eclipse.xtext.documentation.IEObjectDocumentationProvider;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistContext;
import org.eclipse.xtext.ide.editor.contentassist.ContentAssistEntry;
import org.eclipse.xtext.ide.editor.contentassist.IdeCrossrefProposalProvider;
import org.eclipse.xtext.resource.IEObjectDescription;

/**
 * Proposes names with what they stand for: the title beside the name, and the declaration for whoever wants to see it.
 */
class PartProposals extends IdeCrossrefProposalProvider {

	@Inject
	private IEObjectDocumentationProvider declarations;

	@Override
	protected ContentAssistEntry createProposal(IEObjectDescription candidate, CrossReference reference, ContentAssistContext context) {
		ContentAssistEntry entry = super.createProposal(candidate, reference, context);
		EObject element = candidate.getEObjectOrProxy();
		if (entry != null && element != null && !element.eIsProxy()) {
			String title = element instanceof Titled titled ? titled.getTitle() : null;
			entry.setDescription(title == null ? "" : title);
			entry.setDocumentation(declarations.getDocumentation(element));
		}
		return entry;
	}
}
