/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import hullwright.lang.ide.completion.TradeProposals;
import org.eclipse.xtext.documentation.IEObjectDocumentationProvider;
import org.eclipse.xtext.ide.editor.contentassist.IdeContentProposalProvider;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolDetailsProvider;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolKindProvider;
import org.eclipse.xtext.ide.server.symbol.DocumentSymbolMapper.DocumentSymbolNameProvider;
import org.eclipse.xtext.validation.IResourceValidator;

/**
 * What the language services use in place of Xtext's defaults.
 */
public class HullIdeModule extends AbstractHullIdeModule {

	/** Names in the outline as the text writes them. */
	public Class<? extends DocumentSymbolNameProvider> bindDocumentSymbolNameProvider() {
		return OutlineName.class;
	}

	/** What stands beside a name in the outline. */
	public Class<? extends DocumentSymbolDetailsProvider> bindDocumentSymbolDetailsProvider() {
		return OutlineDetail.class;
	}

	/** The kinds of names in the outline. */
	public Class<? extends DocumentSymbolKindProvider> bindDocumentSymbolKindProvider() {
		return OutlineKind.class;
	}

	/** What is offered while a text is written. */
	public Class<? extends IdeContentProposalProvider> bindIdeContentProposalProvider() {
		return TradeProposals.class;
	}

	/** What hover shows of a declaration. */
	public Class<? extends IEObjectDocumentationProvider> bindIEObjectDocumentationProvider() {
		return DeclarationText.class;
	}

	/** The engine validates, on its own reading of the files; the server's would be a second time for nothing. */
	public IResourceValidator bindIResourceValidatorToInstance() {
		return IResourceValidator.NULL;
	}
}
