/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filesystem.IFileStore;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspaceRoot;
import org.eclipse.core.resources.ResourcesPlugin;

/**
 * Where files are: the workbench knows resources and buffers, the server knows URIs; both meet in a path on the disk.
 */
final class FileUris {

	private FileUris() {
	}

	static Optional<Path> path(IFileBuffer buffer) {
		IFile file = FileBuffers.getWorkspaceFileAtLocation(buffer.getLocation());
		if (file != null) {
			return path(file);
		}
		IFileStore store = buffer.getFileStore();
		return store == null ? Optional.empty() : path(store.toURI());
	}

	static Optional<Path> path(IResource resource) {
		return path(resource.getLocationURI());
	}

	static Optional<Path> path(String uri) {
		return path(URI.create(uri));
	}

	private static Optional<Path> path(URI uri) {
		if (uri == null || !"file".equals(uri.getScheme())) {
			return Optional.empty();
		}
		try {
			return Optional.of(Path.of(uri).toAbsolutePath().normalize());
		} catch (IllegalArgumentException | FileSystemNotFoundException e) {
			return Optional.empty();
		}
	}

	/** Without the slash which Path puts behind folders that exist. */
	static String uri(Path path) {
		String uri = path.toUri().toString();
		return uri.endsWith("/") ? uri.substring(0, uri.length() - 1) : uri;
	}

	/** The file, folder or project of the workspace at this place, the outermost if it is linked more than once. */
	static Optional<IResource> resource(Path path) {
		IWorkspaceRoot root = ResourcesPlugin.getWorkspace().getRoot();
		for (IFile file : root.findFilesForLocationURI(path.toUri())) {
			if (file.exists()) {
				return Optional.of(file);
			}
		}
		for (IResource folder : root.findContainersForLocationURI(path.toUri())) {
			if (folder.exists()) {
				return Optional.of(folder);
			}
		}
		return Optional.empty();
	}
}
