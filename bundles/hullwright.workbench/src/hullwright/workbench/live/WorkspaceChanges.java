/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.live;

import hullwright.lang.ide.EditorLanguage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IResourceChangeEvent;
import org.eclipse.core.resources.IResourceChangeListener;
import org.eclipse.core.resources.IResourceDelta;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.WorkspaceFoldersChangeEvent;

/**
 * Tells the server which projects come and go, and which .hull files change on the disk.
 */
final class WorkspaceChanges implements IResourceChangeListener {

	private final LanguageService service;

	WorkspaceChanges(LanguageService service) {
		this.service = service;
	}

	@Override
	public void resourceChanged(IResourceChangeEvent event) {
		if (event.getType() == IResourceChangeEvent.PRE_CLOSE || event.getType() == IResourceChangeEvent.PRE_DELETE) {
			LanguageService.folder((IProject) event.getResource()).ifPresent(folder -> foldersChanged(List.of(), List.of(folder)));
		} else if (event.getType() == IResourceChangeEvent.POST_CHANGE && event.getDelta() != null) {
			report(event.getDelta());
		}
	}

	private void report(IResourceDelta delta) {
		List<WorkspaceFolder> opened = new ArrayList<>();
		List<FileEvent> changed = new ArrayList<>();
		try {
			delta.accept(part -> {
				IResource resource = part.getResource();
				if (resource instanceof IProject project) {
					if (isOpening(part)) {
						LanguageService.folder(project).ifPresent(opened::add);
					}
					return project.isOpen();
				}
				if (resource.getType() == IResource.FILE && decidesFindings(resource)) {
					event(part).ifPresent(changed::add);
				}
				return true;
			});
		} catch (CoreException e) {
			ILog.of(WorkspaceChanges.class).log(e.getStatus());
		}
		if (!opened.isEmpty()) {
			foldersChanged(opened, List.of());
		}
		if (!changed.isEmpty()) {
			service.send(server -> server.getWorkspaceService().didChangeWatchedFiles(new DidChangeWatchedFilesParams(changed)));
		}
	}

	/** A text, or a jar with rules of the house. */
	private static boolean decidesFindings(IResource file) {
		return EditorLanguage.FILE_EXTENSION.equals(file.getFileExtension())
				|| "jar".equalsIgnoreCase(file.getFileExtension()) && file.getParent().getName().equals(EditorLanguage.PLUGIN_FOLDER);
	}

	private static boolean isOpening(IResourceDelta part) {
		return part.getKind() == IResourceDelta.ADDED || (part.getFlags() & IResourceDelta.OPEN) != 0;
	}

	private static Optional<FileEvent> event(IResourceDelta part) {
		FileChangeType type;
		if (part.getKind() == IResourceDelta.ADDED) {
			type = FileChangeType.Created;
		} else if (part.getKind() == IResourceDelta.REMOVED) {
			type = FileChangeType.Deleted;
		} else if ((part.getFlags() & (IResourceDelta.CONTENT | IResourceDelta.REPLACED)) != 0) {
			type = FileChangeType.Changed;
		} else {
			return Optional.empty();
		}
		return FileUris.path(part.getResource()).map(path -> new FileEvent(FileUris.uri(path), type));
	}

	private void foldersChanged(List<WorkspaceFolder> added, List<WorkspaceFolder> removed) {
		service.send(server -> server.getWorkspaceService()
				.didChangeWorkspaceFolders(new DidChangeWorkspaceFoldersParams(new WorkspaceFoldersChangeEvent(added, removed))));
	}
}
