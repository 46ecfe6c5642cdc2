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

	@Override
	public void register(Injector injector) {
		// The grammar imports this package; without it every cross-reference of the generated parser is unresolved.
		EPackage.Registry.INSTANCE.putIfAbsent(SpecPackage.eNS_URI, SpecPackage.eINSTANCE);
		super.register(injector);
	}
}
