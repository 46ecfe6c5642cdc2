/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/**
 * What the program says of itself when it is asked nothing in particular.
 */
@Command(name = "hullwright", versionProvider = Version.class, mixinStandardHelpOptions = true,
		description = "Checks the data networks of boats before the parts are cut.",
		footer = { "", "Exit status: 0 nothing to mend, 1 findings, 2 not everything could be checked.", "",
				"Hullwright computes and compares; it does not replace local codes, the makers' instructions or a licensed "
						+ "electrician. Isolate batteries before working on wiring, and measure after installation." },
		sortOptions = false)
final class HullwrightCommand implements Runnable {

	private final Terminal terminal;

	@Spec
	private CommandSpec spec;

	HullwrightCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public void run() {
		spec.commandLine().usage(terminal.out());
	}
}
