/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.assembly;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class TargetFileTest {

	@Test
	void everyWrappedJarHasANameOfItsOwn() throws IOException {
		TargetFile target = TargetFile.of(Path.of(System.getProperty("hullwright.root")));
		List<String> names = target.artifacts().stream().map(target::wrappedName).flatMap(Optional::stream).toList();
		assertEquals(List.copyOf(new TreeSet<>(names)), names.stream().sorted().toList());
		assertTrue(names.contains("org.ejml.ejml-core"), "a location with several jars: " + names);
		assertTrue(names.stream().noneMatch(name -> name.contains("$")), names.toString());
	}
}
