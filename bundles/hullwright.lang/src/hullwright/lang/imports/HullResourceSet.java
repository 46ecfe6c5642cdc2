/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.imports;

import org.eclipse.xtext.resource.SynchronizedXtextResourceSet;

/**
 * A set of files that finds the built-in catalogs.
 */
public class HullResourceSet extends SynchronizedXtextResourceSet {

	/** An empty set. */
	public HullResourceSet() {
		getURIConverter().getURIHandlers().add(0, new BuiltInCatalogs());
	}
}
