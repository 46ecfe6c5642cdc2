/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IContainer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IFolder;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IProjectDescription;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Path;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.SubMonitor;
import org.osgi.framework.Bundle;

/**
 * An example that ships with the product: a folder of .hull files, copied into the workspace so that it can be changed freely.
 */
final class ExampleProject {

	private static final String FOLDER = "examples/";

	private final Bundle bundle;
	private final String folder;

	private ExampleProject(Bundle bundle, String folder) {
		this.bundle = bundle;
		this.folder = folder;
	}

	/** The shipped examples, by name. */
	static List<ExampleProject> shipped() {
		List<ExampleProject> examples = new ArrayList<>();
		Bundle bundle = Platform.getBundle("hullwright.examples");
		if (bundle == null) {
			bundle = Platform.getBundle(BoatPerspective.BUNDLE);
		}
		Enumeration<String> paths = bundle.getEntryPaths(FOLDER);
		while (paths != null && paths.hasMoreElements()) {
			String path = paths.nextElement();
			if (path.endsWith("/")) {
				examples.add(new ExampleProject(bundle, path));
			}
		}
		examples.sort(Comparator.comparing(ExampleProject::name));
		return examples;
	}

	/** The name of the example's folder, which becomes that of the project. */
	String name() {
		return new Path(folder).lastSegment();
	}

	/**
	 * Copies the example into a new project.
	 *
	 * @return the project, or nothing when a project of that name is there already
	 * @throws CoreException when a file cannot be written; what was written until then stays
	 */
	Optional<IProject> copy(IProgressMonitor monitor) throws CoreException {
		IWorkspace workspace = ResourcesPlugin.getWorkspace();
		IProject project = workspace.getRoot().getProject(name());
		if (project.exists()) {
			return Optional.empty();
		}
		SubMonitor progress = SubMonitor.convert(monitor, "Copying the example " + name(), 2);
		IProjectDescription description = workspace.newProjectDescription(name());
		project.create(description, progress.split(1));
		project.open(progress.split(1));
		project.setDefaultCharset("UTF-8", null);
		for (URL source : files()) {
			copyFile(source, project);
		}
		return Optional.of(project);
	}

	private List<URL> files() {
		Enumeration<URL> entries = bundle.findEntries(folder, "*", true);
		List<URL> files = entries == null ? new ArrayList<>() : Collections.list(entries);
		files.removeIf(entry -> entry.getPath().endsWith("/"));
		return files;
	}

	private void copyFile(URL source, IProject project) throws CoreException {
		IPath path = new Path(source.getPath()).makeRelative();
		IPath within = path.removeFirstSegments(new Path(folder).segmentCount());
		IFile target = project.getFile(within);
		createParents(target.getParent());
		try (InputStream content = source.openStream()) {
			if (!target.exists()) {
				target.create(content, IResource.NONE, null);
			}
		} catch (IOException e) {
			throw new CoreException(Status.error("The example's file " + within + " cannot be read: " + e.getMessage(), e));
		}
	}

	private static void createParents(IContainer folder) throws CoreException {
		if (!folder.exists() && folder instanceof IFolder missing) {
			createParents(missing.getParent());
			missing.create(IResource.NONE, true, null);
		}
	}
}
