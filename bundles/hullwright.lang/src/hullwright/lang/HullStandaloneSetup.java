/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang;

import com.google.inject.Injector;
import hullwright.spec.SpecPackage;
import org.eclipse.emf.ecore.EPackage;

/**
 * Sets the language up on a plain class path. Never called inside OSGi, where the registries belong to the platform.
 */
public class HullStandaloneSetup extends HullStandaloneSetupGenerated {

	/**
	 * The package comes first: the injector makes the validator at once, which registers itself for the package, and the
	 * grammar imports it for every cross-reference.
	 */
	@Override
	public Injector createInjectorAndDoEMFRegistration() {
		EPackage.Registry.INSTANCE.putIfAbsent(SpecPackage.eNS_URI, SpecPackage.eINSTANCE);
		return super.createInjectorAndDoEMFRegistration();
	}
}
