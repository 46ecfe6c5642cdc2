/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import com.google.inject.AbstractModule;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.eclipse.xtext.ide.server.LanguageServerImpl;
import org.eclipse.xtext.resource.IResourceServiceProvider;
import org.eclipse.xtext.resource.XtextResourceSet;

/**
 * What our server uses in place of Xtext's parts.
 */
final class HullServerModule extends AbstractModule {

	@Override
	protected void configure() {
		bind(LanguageServerImpl.class).to(HullLanguageServer.class);
		// Questions are answered one after another: names are linked when they are first asked for, and two at a time would clash.
		bind(ExecutorService.class).toProvider(() -> Executors.newSingleThreadExecutor(task -> {
			Thread thread = new Thread(task, "Hullwright answers");
			thread.setDaemon(true);
			return thread;
		}));
		// Xtext looks languages up with a ServiceLoader, which sees nothing across bundles.
		bind(IResourceServiceProvider.Registry.class).toInstance(IResourceServiceProvider.Registry.INSTANCE);
		// The language's own sets of files find the built-in catalogs.
		bind(XtextResourceSet.class).toProvider(() -> EditorLanguage.injector().getInstance(XtextResourceSet.class));
	}
}
