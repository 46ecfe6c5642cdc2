/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.Test;

/**
 * The third door: the live editor finds in every example what the command line and the language server find as processes of their
 * own, which are held to the same list by {@code SameFindingsThroughEveryDoorTest}.
 */
class SameFindingsInTheEditorTest {

	private static final Path EXAMPLES = Path.of("../hullwright.examples/examples");
	private static final Path FINDINGS = Path.of("../hullwright.tests/src_test/hullwright/tests/doors/findings-of-examples.txt");

	@Test
	void everyExampleOpenInEditorsHasTheFindingsOfTheOtherDoors() throws Exception {
		List<Path> examples;
		try (Stream<Path> folders = Files.list(EXAMPLES)) {
			examples = folders.filter(Files::isDirectory).sorted().toList();
		}
		assertTrue(examples.size() > 5, "the examples are there");
		List<String> list = Files.readAllLines(FINDINGS);
		for (Path example : examples) {
			String name = example.getFileName().toString();
			TreeSet<String> expected = new TreeSet<>();
			list.stream().filter(line -> line.startsWith(name + "/")).forEach(line -> expected.add(line.substring(name.length() + 1)));
			holds("door-" + name, example, expected);
		}
	}

	private static void holds(String project, Path example, TreeSet<String> expected) throws Exception {
		Map<String, String> texts = new HashMap<>();
		try (Stream<Path> files = Files.walk(example)) {
			for (Path file : files.filter(each -> each.toString().endsWith(".hull")).toList()) {
				texts.put(example.relativize(file).toString().replace('\\', '/'), Files.readString(file));
			}
		}
		IProject opened = Bench.create(project, texts);
		try {
			for (String file : texts.keySet()) {
				Window.ui(() -> IDE.openEditor(Window.page(), opened.getFile(file)));
			}
			Window.until("the findings of " + example.getFileName(), () -> listed(opened), expected::equals);
		} finally {
			Window.ui(() -> Window.page().closeAllEditors(false));
			opened.delete(true, true, null);
		}
	}

	private static TreeSet<String> listed(IProject project) throws CoreException {
		List<String> words = new ArrayList<>(List.of("advice", "warning", "error"));
		TreeSet<String> findings = new TreeSet<>();
		for (IMarker marker : project.findMarkers("hullwright.workbench.finding", true, IResource.DEPTH_INFINITE)) {
			String rule = marker.getAttribute("rule", "");
			if (!rule.isEmpty()) {
				// a finding about no place of a text stands at the project
				boolean inText = marker.getResource().getType() == IResource.FILE;
				findings.add((inText ? marker.getResource().getProjectRelativePath().toString() : "") + ":"
						+ (inText ? marker.getAttribute(IMarker.LINE_NUMBER, 0) : 0) + ":" + (inText ? marker.getAttribute("column", 0) : 0) + " "
						+ words.get(marker.getAttribute(IMarker.SEVERITY, -1)) + " " + rule);
			}
		}
		return findings;
	}
}
