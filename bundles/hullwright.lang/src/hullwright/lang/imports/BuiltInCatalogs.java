/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.imports;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.URIHandlerImpl;

/**
 * The catalogs that ship with the program, which a text imports as {@code "standard:parts"}. They are read from the class
 * path, never written.
 */
public final class BuiltInCatalogs extends URIHandlerImpl {

	/** What an import of a built-in catalog starts with. */
	public static final String SCHEME = "standard";

	/** The names of those that there are. */
	public static final List<String> NAMES = List.of("parts", "serial", "messages");

	/** The URI of the built-in catalog with a name, whether it exists or not. */
	public static URI uriOf(String name) {
		return URI.createURI(SCHEME + ":/" + name + ".hull");
	}

	/** Whether this URI names a built-in catalog. */
	public static boolean isBuiltIn(URI uri) {
		return SCHEME.equals(uri.scheme());
	}

	/** The text of a built-in catalog, or null if there is none with this URI. */
	public static InputStream open(URI uri) {
		return BuiltInCatalogs.class.getResourceAsStream("/standard/" + uri.lastSegment());
	}

	@Override
	public boolean canHandle(URI uri) {
		return isBuiltIn(uri);
	}

	@Override
	public InputStream createInputStream(URI uri, Map<?, ?> options) throws IOException {
		InputStream text = open(uri);
		if (text == null) {
			throw new IOException("there is no built-in catalog " + uri);
		}
		return text;
	}

	@Override
	public OutputStream createOutputStream(URI uri, Map<?, ?> options) throws IOException {
		throw new IOException("built-in catalogs are not written to");
	}

	@Override
	public boolean exists(URI uri, Map<?, ?> options) {
		return BuiltInCatalogs.class.getResource("/standard/" + uri.lastSegment()) != null;
	}
}
