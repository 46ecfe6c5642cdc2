/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.imports;

import hullwright.spec.Import;
import hullwright.spec.SpecFile;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;

/**
 * Finds the files that a file imports.
 */
public final class Imports {

	private Imports() {
	}

	/** Where an import points: to a built-in catalog or to a file beside the importing one. Empty if it is no path at all. */
	public static Optional<URI> target(Import statement) {
		String path = statement.getImportURI();
		Resource resource = statement.eResource();
		if (path == null || path.isBlank() || resource == null) {
			return Optional.empty();
		}
		try {
			if (path.startsWith(BuiltInCatalogs.SCHEME + ":")) {
				return Optional.of(BuiltInCatalogs.uriOf(path.substring(BuiltInCatalogs.SCHEME.length() + 1)));
			}
			URI relative = URI.createURI(path.replace('\\', '/'));
			return relative.isRelative() && relative.hasRelativePath()
					? Optional.of(relative.resolve(resource.getURI()))
					: Optional.empty();
		} catch (IllegalArgumentException e) {
			return Optional.empty();
		}
	}

	/** The file that an import points to, or empty if it cannot be read. */
	public static Optional<SpecFile> file(Import statement) {
		ResourceSet resources = statement.eResource() == null ? null : statement.eResource().getResourceSet();
		return resources == null ? Optional.empty() : target(statement).flatMap(uri -> load(resources, uri));
	}

	private static Optional<SpecFile> load(ResourceSet resources, URI uri) {
		try {
			Resource resource = resources.getResource(uri, true);
			return resource.getContents().stream().filter(SpecFile.class::isInstance).map(SpecFile.class::cast).findFirst();
		} catch (RuntimeException e) {
			// EMF wraps whatever went wrong; a half-loaded resource would hide the failure from the next reader
			Resource broken = resources.getResource(uri, false);
			if (broken != null) {
				resources.getResources().remove(broken);
			}
			return Optional.empty();
		}
	}

	/** The files that a file imports directly, by import, in the order of the text. */
	public static Map<Import, SpecFile> of(SpecFile file) {
		Map<Import, SpecFile> found = new LinkedHashMap<>();
		for (Import statement : file.getImports()) {
			file(statement).ifPresent(imported -> found.put(statement, imported));
		}
		return found;
	}
}
