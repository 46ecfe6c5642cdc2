/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Map;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.impl.URIHandlerImpl;

/**
 * Lets EMF read the files of a snapshot, and nothing else of the world: whatever a text imports comes from here or is a
 * built-in catalog.
 */
final class SnapshotFiles extends URIHandlerImpl {

	private static final String SCHEME = "snapshot";

	private Snapshot snapshot = Snapshot.of(Map.of());

	/** Lets the files of another snapshot be read from now on. */
	void show(Snapshot other) {
		snapshot = other;
	}

	/** The URI of a file of the project. */
	static URI uriOf(String path) {
		return URI.createHierarchicalURI(SCHEME, null, null, path.split("/"), null, null);
	}

	/** The path of a file of the project, relative to it; of a built-in catalog, the way it is imported. */
	static String pathOf(URI uri) {
		String path = String.join("/", uri.segments());
		return SCHEME.equals(uri.scheme()) ? path : uri.scheme() + ":" + uri.trimFileExtension().lastSegment();
	}

	/** Handles every URI that reaches it, so that no handler behind it opens a file or a connection. */
	@Override
	public boolean canHandle(URI uri) {
		return true;
	}

	@Override
	public InputStream createInputStream(URI uri, Map<?, ?> options) throws IOException {
		Snapshot.FileContent content = SCHEME.equals(uri.scheme()) ? snapshot.files().get(pathOf(uri)) : null;
		if (content == null || content.problem().isPresent()) {
			throw new IOException("not in this project: " + uri);
		}
		return new ByteArrayInputStream(content.bytes());
	}

	@Override
	public OutputStream createOutputStream(URI uri, Map<?, ?> options) throws IOException {
		throw new IOException("a check writes nothing");
	}

	@Override
	public boolean exists(URI uri, Map<?, ?> options) {
		return SCHEME.equals(uri.scheme()) && snapshot.files().containsKey(pathOf(uri));
	}
}
