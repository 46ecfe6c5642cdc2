/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.CheckRequest;
import hullwright.check.Checker;
import hullwright.check.Mending;
import hullwright.check.Snapshot;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;

/**
 * Mends the files of a project on disk and tells what it did.
 */
record ProjectMending(Checker checker, Terminal terminal) {

	/**
	 * Mends a project.
	 *
	 * @param rules the rules whose design changes are wanted
	 * @return the project as it is afterwards on disk
	 * @throws Refusal if there is no such rule, or a file cannot be written
	 */
	Snapshot mend(Project project, CheckRequest request, Set<String> rules) {
		rules.stream().filter(rule -> checker.rules(request.snapshot()).rule(rule).isEmpty()).findFirst().ifPresent(rule -> {
			throw new Refusal("there is no rule '" + rule + "' to mend by");
		});
		Mending.Mended mended = new Mending(checker).mend(request, rules);
		mended.snapshot().files().forEach((file, content) -> {
			byte[] before = request.snapshot().files().get(file).bytes();
			if (!Arrays.equals(before, content.bytes())) {
				replace(project.pathOf(file), before, content.bytes());
			}
		});
		for (Mending.Made each : mended.made()) {
			terminal.err().println("mended  " + project.pathOf(each.finding().finding().origin().file()) + ":" + each.finding().finding().origin().line() + ": "
					+ each.proposal().title() + " (" + each.finding().finding().rule() + ")");
		}
		for (Mending.Left each : mended.left()) {
			terminal.err().println("left  " + project.pathOf(each.finding().finding().origin().file()) + ":" + each.finding().finding().origin().line() + ": "
					+ each.finding().finding().rule() + ": " + each.reason());
		}
		return mended.snapshot();
	}

	private static void replace(String path, byte[] before, byte[] after) {
		try {
			new FileReplacement(Path.of(path).toRealPath(), before).by(after);
		} catch (IOException failure) {
			throw new Refusal(path + " was not mended: " + failure.getMessage());
		}
	}
}
