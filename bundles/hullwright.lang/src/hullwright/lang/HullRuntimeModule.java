/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import com.google.inject.Binder;
import com.google.inject.name.Names;
import hullwright.lang.conversion.HullValueConverters;
import hullwright.lang.formatting.HullFormatter;
import hullwright.lang.imports.HullResourceSet;
import hullwright.lang.messages.HullLinkingMessages;
import hullwright.lang.messages.HullSyntaxMessages;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.xtext.conversion.IValueConverterService;
import org.eclipse.xtext.formatting2.IFormatter2;
import org.eclipse.xtext.linking.ILinkingDiagnosticMessageProvider;
import org.eclipse.xtext.parser.antlr.ISyntaxErrorMessageProvider;
import org.eclipse.xtext.resource.XtextResourceSet;
import org.eclipse.xtext.validation.CompositeEValidator;

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
	@Override
	public Class<? extends ResourceSet> bindResourceSet() {
		return HullResourceSet.class;
	}

	@Override
	public Class<? extends XtextResourceSet> bindXtextResourceSet() {
		return HullResourceSet.class;
	}

	/** The one layout. The generator makes no stub of it. */
	public Class<? extends IFormatter2> bindIFormatter2() {
		return HullFormatter.class;
	}

	/** EMF's own checks would tell each unresolved name a second time, in the words of the model. */
	public void configureChecksOfEmf(Binder binder) {
		binder.bindConstant().annotatedWith(Names.named(CompositeEValidator.USE_EOBJECT_VALIDATOR)).to(false);
	}
}
