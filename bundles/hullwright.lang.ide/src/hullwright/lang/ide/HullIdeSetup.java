/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

import com.google.inject.Guice;
import com.google.inject.Injector;
import hullwright.lang.HullRuntimeModule;
import hullwright.lang.HullStandaloneSetup;
import org.eclipse.xtext.util.Modules2;

/**
 * Sets the language with its services up on a plain class path. Never called inside OSGi; see {@link EditorLanguage}.
 */
public class HullIdeSetup extends HullStandaloneSetup {

	@Override
	public Injector createInjector() {
		return Guice.createInjector(Modules2.mixin(new HullRuntimeModule(), new HullIdeModule()));
	}
}
