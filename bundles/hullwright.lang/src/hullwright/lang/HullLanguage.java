/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import com.google.inject.Guice;
import com.google.inject.Injector;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.impl.BinaryGrammarResourceFactoryImpl;
import org.osgi.framework.FrameworkUtil;

/**
 * The language's services for reading text outside an editor: one injector for the whole process, inside OSGi and on a plain
 * class path.
 */
public final class HullLanguage {

	private static final Injector SERVICES = create();

	private HullLanguage() {
	}

	/** The services. */
	public static Injector services() {
		return SERVICES;
	}

	private static Injector create() {
		// Inside OSGi the platform fills EMF's registries from the bundles' extensions; the stand-alone set-up would fight it.
		if (FrameworkUtil.getBundle(HullLanguage.class) == null) {
			return new HullStandaloneSetup().createInjectorAndDoEMFRegistration();
		}
		// No extension tells EMF how the grammar is stored, and without that the language cannot read its own grammar.
		Resource.Factory.Registry.INSTANCE.getExtensionToFactoryMap().putIfAbsent("xtextbin", new BinaryGrammarResourceFactoryImpl());
		return Guice.createInjector(new HullRuntimeModule());
	}
}
