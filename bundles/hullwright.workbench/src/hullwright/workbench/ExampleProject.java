/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import org.eclipse.core.runtime.ILog;
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
public final class ExampleProject {

	private static final String FOLDER = "examples/";

	private final Bundle bundle;
	private final String folder;

	private ExampleProject(Bundle bundle, String folder) {
		this.bundle = bundle;
		this.folder = folder;
	}

	/** The shipped examples, by name. */
	public static List<ExampleProject> shipped() {
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
	public String name() {
		return new Path(folder).lastSegment();
	}

	/** Its texts by file, the series first. Empty where they cannot be read. */
	public Map<String, String> texts() {
		Map<String, String> texts = new LinkedHashMap<>();
		for (URL source : files()) {
			try (InputStream content = source.openStream()) {
				texts.put(within(source).toString(), new String(content.readAllBytes(), StandardCharsets.UTF_8));
			} catch (IOException e) {
				ILog.of(ExampleProject.class).error("An example cannot be read.", e);
			}
		}
		List<String> order = new ArrayList<>(texts.keySet());
		order.sort(Comparator.comparing((String file) -> !declaresSeries(texts.get(file))).thenComparing(Comparator.naturalOrder()));
		Map<String, String> ordered = new LinkedHashMap<>();
		order.forEach(file -> ordered.put(file, texts.get(file)));
		return ordered;
	}

	static boolean declaresSeries(String text) {
		return text.lines().anyMatch(line -> line.startsWith("series "));
	}

	/** What it shows, as the comment at the head of its series says; of its profile, if it has several series. */
	public String about() {
		Map<String, String> texts = texts();
		List<String> series = texts.values().stream().filter(ExampleProject::declaresSeries).toList();
		return (series.size() == 1 ? series : texts.values().stream().filter(text -> !declaresSeries(text)).toList()).stream().findFirst()
				.map(ExampleProject::head).orElse("");
	}

	/** The last paragraph of the comment that a text begins with. */
	private static String head(String text) {
		StringBuilder paragraph = new StringBuilder();
		for (String line : text.lines().takeWhile(each -> each.startsWith("//")).map(each -> each.substring(2).strip()).toList()) {
			if (line.isEmpty()) {
				paragraph.setLength(0);
			} else {
				paragraph.append(paragraph.isEmpty() ? "" : " ").append(line);
			}
		}
		return paragraph.toString();
	}

	/**
	 * Copies the example into a new project.
	 *
	 * @return the project, or nothing when a project of that name is there already
	 * @throws CoreException when a file cannot be written; what was written until then stays
	 */
	public Optional<IProject> copy(String name, IProgressMonitor monitor) throws CoreException {
		IWorkspace workspace = ResourcesPlugin.getWorkspace();
		IProject project = workspace.getRoot().getProject(name);
		if (project.exists()) {
			return Optional.empty();
		}
		SubMonitor progress = SubMonitor.convert(monitor, "Copying the example " + name(), 2);
		IProjectDescription description = workspace.newProjectDescription(name);
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
		IPath within = within(source);
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

	private IPath within(URL source) {
		return new Path(source.getPath()).makeRelative().removeFirstSegments(new Path(folder).segmentCount());
	}

	private static void createParents(IContainer folder) throws CoreException {
		if (!folder.exists() && folder instanceof IFolder missing) {
			createParents(missing.getParent());
			missing.create(IResource.NONE, true, null);
		}
	}
}
