/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ConfigCommandTest {

	@TempDir
	Path folder;

	private Run config(String profile) throws IOException {
		return Run.of("config", Files.writeString(folder.resolve("yard.hull"), profile).toString());
	}

	@Test
	void everyValueTellsWhereItComesFrom() throws IOException {
		Run run = config("profile Yard from standard {\n  cabling/terminator-missing warning\n  cabling/drop-too-long { error above 4 m }\n cabling/backbone-too-long off\n}\n");
		assertEquals(0, run.status(), run.err());
		String read = run.out().replaceAll(" +", " ");
		assertTrue(read.contains("cabling/terminator-missing warning profile Yard, yard.hull line 2\n"), read);
		assertTrue(read.contains("cabling/drop-too-long on\n error above 4 m profile Yard, yard.hull line 3\n"), read);
		assertTrue(read.contains("cabling/backbone-too-long off profile Yard, yard.hull line 4\n"), read);
	}

	@Test
	void withoutAProfileTheStandardIsInForce() throws IOException {
		Run run = config("catalog Nothing { }\n");
		assertEquals(0, run.status(), run.err());
		assertTrue(run.out().replaceAll(" +", " ").contains("\n advice above 5 m common practice: keep drops to 5 m\n error above 6 m public cabling guide"), run.out());
	}

	@Test
	void aProfileWithAWrongUnitIsToldWithItsPlace() throws IOException {
		Run run = config("profile Yard from standard {\n  cabling/drop-too-long { error above 4 V }\n}\n");
		assertEquals(2, run.status());
		assertTrue(run.err().contains("yard.hull:2:3: cabling/drop-too-long has limits of length, such as '6 m', not '4 V'"), run.err());
		assertTrue(run.out().contains("error above 6 m"), "the standard stays in force");
	}

	@Test
	void twoProfilesAreTold() throws IOException {
		Files.writeString(folder.resolve("other.hull"), "profile Other from standard { }\n");
		Run run = config("profile Yard from standard { }\n");
		assertEquals(2, run.status());
		assertTrue(run.err().contains("a project has one profile, and 'Other' in other.hull is it"), run.err());
	}

	@Test
	void timingTellsStagesAndRules() throws IOException {
		Run run = Run.of("check", "--timing", "../hullwright.examples/examples/first-power-up");
		assertEquals(0, run.status(), run.out());
		for (String line : new String[] { "reading ", "planning ", "checking ", "sorting ", "  rule cabling/drop-too-long ", "  bundle hullwright.rules.cabling " }) {
			assertTrue(run.err().contains(line), line + " in " + run.err());
		}
	}
}
