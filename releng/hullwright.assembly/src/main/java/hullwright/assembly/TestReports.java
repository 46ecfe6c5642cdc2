/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.assembly;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Counts the tests in the reports of a build. It stands alone, since it is also run when nothing could be compiled.
 */
public final class TestReports {

	private int passed;
	private int failed;
	private int skipped;

	private TestReports() {
	}

	/**
	 * Names each test that failed or was skipped, and prints a last line of three numbers: passed, failed, skipped.
	 *
	 * @param arguments the root of the source tree
	 */
	public static void main(String[] arguments) throws Exception {
		TestReports reports = new TestReports();
		for (Path report : reportsBelow(Path.of(arguments[0]))) {
			reports.add(report);
		}
		System.out.println(reports.passed + " " + reports.failed + " " + reports.skipped);
	}

	private static List<Path> reportsBelow(Path root) throws IOException {
		try (Stream<Path> files = Files.walk(root, 5)) {
			return files.filter(file -> file.getFileName().toString().matches("TEST-.*\\.xml")
					&& file.getParent().endsWith("target/surefire-reports")).sorted().toList();
		}
	}

	private void add(Path report) throws Exception {
		NodeList cases;
		try (InputStream content = Files.newInputStream(report)) {
			cases = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(content).getElementsByTagName("testcase");
		}
		for (int i = 0; i < cases.getLength(); i++) {
			Element test = (Element) cases.item(i);
			String name = test.getAttribute("classname") + " " + test.getAttribute("name");
			if (test.getElementsByTagName("failure").getLength() + test.getElementsByTagName("error").getLength() > 0) {
				failed++;
				System.out.println("FAILED: " + name);
			} else if (test.getElementsByTagName("skipped").getLength() > 0) {
				skipped++;
				System.out.println("SKIPPED: " + name);
			} else {
				passed++;
			}
		}
	}
}
