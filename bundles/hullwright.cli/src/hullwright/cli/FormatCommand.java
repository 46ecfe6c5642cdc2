/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.check.FileLayout;
import hullwright.check.Snapshot.FileContent;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code hullwright format}: lays files out in place.
 */
@Command(name = "format", sortOptions = false,
		description = "Lays .hull files out in place, in the one way there is. Only white space changes: no word, no comment. "
				+ "A file that is not understood is named and left alone.",
		footer = { "", "Exit status: 0 all is laid out, 1 with --check: files would change, 2 not everything could be laid out." })
final class FormatCommand implements Callable<Integer> {

	private final Terminal terminal;

	@Parameters(paramLabel = "PATH", arity = "1..*", description = "Files, or folders with all .hull files below them.")
	private List<String> paths = new ArrayList<>();

	@Mixin
	private HelpOption help;

	@Option(names = "--check", description = "Change nothing; name the files that would change.")
	private boolean checkOnly;

	private int alike;
	private int changed;
	private int leftAlone;

	FormatCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public Integer call() {
		Set<Path> seen = new HashSet<>();
		for (Project project : Project.of(paths, Path.of(""))) {
			for (String file : project.focus()) {
				format(project.pathOf(file), project.snapshot().files().get(file), seen);
			}
		}
		terminal.out().println(summary());
		return leftAlone > 0 ? ExitStatus.INCOMPLETE : checkOnly && changed > 0 ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
	}

	/** Lays a file out unless it was reached before, by another path or a link. */
	private void format(String path, FileContent content, Set<Path> seen) {
		FileLayout layout = FileLayout.of(content);
		if (!layout.problems().isEmpty()) {
			leaveAlone(path, layout.problems());
			return;
		}
		try {
			Path file = Path.of(path).toRealPath();
			if (!seen.add(file)) {
				return;
			}
			if (layout.changed() && !checkOnly) {
				new FileReplacement(file, content.bytes()).by(layout.bytes());
			}
			if (layout.changed()) {
				terminal.out().println((checkOnly ? "would change  " : "laid out  ") + path);
			}
			changed += layout.changed() ? 1 : 0;
			alike += layout.changed() ? 0 : 1;
		} catch (IOException failure) {
			leaveAlone(path + ": " + failure.getMessage());
		}
	}

	private void leaveAlone(String path, List<FileLayout.Problem> problems) {
		FileLayout.Problem first = problems.get(0);
		String others = problems.size() == 1 ? "" : ", and " + (problems.size() - 1) + " more; 'hullwright check' tells them";
		leaveAlone(path + ":" + first.line() + ":" + first.column() + ": " + first.message() + others);
	}

	private void leaveAlone(String why) {
		terminal.err().println("hullwright: " + why);
		leftAlone++;
	}

	private String summary() {
		List<String> parts = new ArrayList<>();
		if (changed > 0) {
			parts.add(changed + (checkOnly ? " would change" : " laid out"));
		}
		if (alike > 0) {
			parts.add(alike + (checkOnly ? " would not" : " as it should be"));
		}
		if (leftAlone > 0) {
			parts.add(leftAlone + " left alone");
		}
		return count(changed + alike + leftAlone) + ": " + String.join(", ", parts);
	}

	private static String count(int files) {
		return files == 1 ? "1 file" : files + " files";
	}
}
