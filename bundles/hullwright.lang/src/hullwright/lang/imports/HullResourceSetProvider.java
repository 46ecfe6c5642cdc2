/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.imports;

import com.google.inject.Inject;
import com.google.inject.Provider;
import org.eclipse.xtext.resource.SynchronizedXtextResourceSet;
import org.eclipse.xtext.resource.XtextResourceSet;

/**
 * Makes resource sets that find the built-in catalogs.
 */
public class HullResourceSetProvider implements Provider<XtextResourceSet> {

	@Inject
	private Provider<SynchronizedXtextResourceSet> resourceSets;

	@Override
	public XtextResourceSet get() {
		XtextResourceSet resourceSet = resourceSets.get();
		resourceSet.getURIConverter().getURIHandlers().add(0, new BuiltInCatalogs());
		return resourceSet;
	}
}
