/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import com.google.inject.Guice;
import com.google.inject.Injector;
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
		boolean insideOsgi = FrameworkUtil.getBundle(HullLanguage.class) != null;
		return insideOsgi ? Guice.createInjector(new HullRuntimeModule()) : new HullStandaloneSetup().createInjectorAndDoEMFRegistration();
	}
}
