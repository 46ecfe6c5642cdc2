/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import com.google.inject.Provider;
import hullwright.lang.conversion.HullValueConverters;
import hullwright.lang.imports.HullResourceSetProvider;
import hullwright.lang.messages.HullLinkingMessages;
import hullwright.lang.messages.HullSyntaxMessages;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.linking.ILinkingDiagnosticMessageProvider;
import org.eclipse.xtext.parser.antlr.ISyntaxErrorMessageProvider;
import org.eclipse.xtext.resource.XtextResourceSet;

/**
 * What the language uses in place of Xtext's defaults.
 */
public class HullRuntimeModule extends AbstractHullRuntimeModule {

	@Override
	public Class<? extends IValueConverterService> bindIValueConverterService() {
		return HullValueConverters.class;
	}

	/** Syntax errors in the words of the trade. */
	public Class<? extends ISyntaxErrorMessageProvider> bindISyntaxErrorMessageProvider() {
		return HullSyntaxMessages.class;
	}

	/** Linking errors that say what was looked for, where, and which near name exists. */
	public Class<? extends ILinkingDiagnosticMessageProvider.Extended> bindILinkingDiagnosticMessageProvider$Extended() {
		return HullLinkingMessages.class;
	}

	/** Resource sets that know the built-in catalogs. */
	public Class<? extends Provider<XtextResourceSet>> provideXtextResourceSet() {
		return HullResourceSetProvider.class;
	}
}
