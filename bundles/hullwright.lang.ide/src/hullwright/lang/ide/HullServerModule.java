/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import com.google.inject.AbstractModule;
import org.eclipse.xtext.ide.server.LanguageServerImpl;
import org.eclipse.xtext.ide.server.concurrent.IRequestManager;
import org.eclipse.xtext.resource.IResourceServiceProvider;
import org.eclipse.xtext.resource.XtextResourceSet;

/**
 * What our server uses in place of Xtext's parts.
 */
final class HullServerModule extends AbstractModule {

	@Override
	protected void configure() {
		bind(LanguageServerImpl.class).to(HullLanguageServer.class);
		bind(IRequestManager.class).to(RequestsInOrder.class);
		// Xtext looks languages up with a ServiceLoader, which sees nothing across bundles.
		bind(IResourceServiceProvider.Registry.class).toInstance(IResourceServiceProvider.Registry.INSTANCE);
		// The language's own sets of files find the built-in catalogs.
		bind(XtextResourceSet.class).toProvider(() -> EditorLanguage.injector().getInstance(XtextResourceSet.class));
	}
}
