/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import com.google.inject.Guice;
import com.google.inject.Injector;
import hullwright.check.plugin.PluginFile;
import hullwright.lang.HullLanguage;
import hullwright.lang.HullRuntimeModule;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.GrammarUtil;
import org.eclipse.xtext.IGrammarAccess;
import org.eclipse.xtext.resource.IResourceFactory;
import org.eclipse.xtext.resource.IResourceServiceProvider;
import org.eclipse.xtext.util.Modules2;

/**
 * The language with the services of an editor: made once for the process, on first use, which costs some tenths of a second.
 */
public final class EditorLanguage {

	/** The extension of the language's files, without the dot. */
	public static final String FILE_EXTENSION = "hull";
	/** The folder of a project whose jars bring rules of the house. */
	public static final String PLUGIN_FOLDER = PluginFile.FOLDER;

	private EditorLanguage() {
	}

	/** The words of the grammar, which cannot be names without a circumflex before them. */
	public static Set<String> keywords() {
		Set<String> words = new TreeSet<>(GrammarUtil.getAllKeywords(injector().getInstance(IGrammarAccess.class).getGrammar()));
		words.removeIf(word -> !Character.isLetter(word.charAt(0)));
		return words;
	}

	static Injector injector() {
		return Made.INJECTOR;
	}

	/** Loaded, and so filled, by the first caller; the class loader keeps the others waiting. */
	private static final class Made {

		static final Injector INJECTOR = make();

		private static Injector make() {
			// What the engine reads with comes first: whoever is registered last serves the editors.
			HullLanguage.services();
			Injector injector = Guice.createInjector(Modules2.mixin(new HullRuntimeModule(), new HullIdeModule()));
			Resource.Factory.Registry.INSTANCE.getExtensionToFactoryMap()
					.put(FILE_EXTENSION, injector.getInstance(IResourceFactory.class));
			IResourceServiceProvider.Registry.INSTANCE.getExtensionToFactoryMap()
					.put(FILE_EXTENSION, injector.getInstance(IResourceServiceProvider.class));
			return injector;
		}
	}
}
