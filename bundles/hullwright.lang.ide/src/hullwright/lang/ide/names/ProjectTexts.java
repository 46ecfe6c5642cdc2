/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.lsp4j.Position;
import org.eclipse.xtext.ide.server.ProjectManager;
import org.eclipse.xtext.ide.server.WorkspaceManager;
import org.eclipse.xtext.resource.IResourceDescription;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.service.OperationCanceledError;

/**
 * The texts among which a name is looked for: all .hull files of the folders that the client has opened, as they stand in its
 * editors.
 */
public final class ProjectTexts {

	private final WorkspaceManager workspace;
	private final BooleanSupplier canceled;

	/**
	 * @param workspace the server's files
	 * @param canceled  whether the answer is no longer wanted
	 */
	public ProjectTexts(WorkspaceManager workspace, BooleanSupplier canceled) {
		this.workspace = workspace;
		this.canceled = canceled;
	}

	/** The text with this URI, or null if there is none. */
	XtextResource at(URI uri) {
		return workspace.doRead(uri, (document, resource) -> resource);
	}

	/** Where a position lies in a text. */
	int offset(URI uri, Position position) {
		return workspace.doRead(uri, (document, resource) -> document.getOffSet(position));
	}

	/** The folder that the client opened and that holds a file. */
	Optional<Path> folder(URI uri) {
		URI base = workspace.getProjectBaseDir(uri);
		return base == null || !base.isFile() ? Optional.empty() : Optional.of(Path.of(base.toFileString()));
	}

	/** The version that an editor shows, or null if none does. */
	Integer version(URI uri) {
		return workspace.isDocumentOpen(uri) ? workspace.doRead(uri, (document, resource) -> document == null ? null : document.getVersion()) : null;
	}

	/** All texts that may name what stands in a text. A built-in catalog may be named everywhere. */
	List<XtextResource> thatMayName(EObject element) {
		URI home = element.eResource().getURI();
		List<XtextResource> texts = new ArrayList<>();
		for (ProjectManager project : home.isFile() ? List.of(workspace.getProjectManager(home)) : workspace.getProjectManagers()) {
			texts.addAll(of(project, home));
		}
		return texts;
	}

	private List<XtextResource> of(ProjectManager project, URI home) {
		SortedSet<String> uris = new TreeSet<>();
		for (IResourceDescription description : project.getIndexState().getResourceDescriptions().getAllResourceDescriptions()) {
			uris.add(description.getURI().toString());
		}
		if (home.isFile()) {
			uris.add(home.toString());
		}
		return uris.stream().map(URI::createURI).filter(URI::isFile).flatMap(uri -> text(project, uri)).toList();
	}

	private Stream<XtextResource> text(ProjectManager project, URI uri) {
		if (canceled.getAsBoolean()) {
			throw new OperationCanceledError(null);
		}
		try {
			Resource resource = project.getResource(uri);
			return resource instanceof XtextResource text ? Stream.of(text) : Stream.empty();
		} catch (RuntimeException e) {
			// a file that has gone meanwhile names nothing
			return Stream.empty();
		}
	}

	/** Whether both are the same thing, even if a text was read twice. */
	static boolean same(EObject one, EObject other) {
		return one == other || one != null && other != null && one.eClass() == other.eClass()
				&& EcoreUtil.getURI(one).equals(EcoreUtil.getURI(other));
	}
}
