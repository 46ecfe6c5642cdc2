/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/**
 * The program {@code hullwright}.
 */
public final class Main {

	/** With this variable set, an unexpected failure shows where it happened; without it, a person is spared that. */
	private static final String TRACE = "HULLWRIGHT_TRACE";

	private Main() {
	}

	/** Runs a command and ends the process with its status. */
	public static void main(String[] arguments) {
		PrintStream out = new PrintStream(System.out, false, StandardCharsets.UTF_8);
		PrintStream err = new PrintStream(System.err, false, StandardCharsets.UTF_8);
		int status = run(arguments, out, err, Ansi.AUTO.enabled());
		out.flush();
		err.flush();
		System.exit(status);
	}

	/**
	 * Runs a command.
	 *
	 * @param coloured whether a person sees the output on a terminal with colours
	 * @return the exit status
	 */
	static int run(String[] arguments, PrintStream out, PrintStream err, boolean coloured) {
		CommandLine commandLine = commandLine(new Terminal(out, err, coloured));
		commandLine.setOut(new java.io.PrintWriter(out, true, StandardCharsets.UTF_8));
		commandLine.setErr(new java.io.PrintWriter(err, true, StandardCharsets.UTF_8));
		commandLine.setColorScheme(CommandLine.Help.defaultColorScheme(coloured ? Ansi.ON : Ansi.OFF));
		commandLine.setCaseInsensitiveEnumValuesAllowed(true);
		commandLine.setExecutionExceptionHandler((failure, command, parsed) -> {
			if (failure instanceof Refusal) {
				err.println("hullwright: " + failure.getMessage());
			} else {
				err.println("hullwright: this should not have happened: " + failure + "; set " + TRACE + "=1 to see where");
				if (System.getenv(TRACE) != null) {
					failure.printStackTrace(err);
				}
			}
			return ExitStatus.INCOMPLETE;
		});
		return commandLine.execute(arguments);
	}

	private static CommandLine commandLine(Terminal terminal) {
		CommandLine commandLine = new CommandLine(new HullwrightCommand(terminal));
		commandLine.addSubcommand(new CheckCommand(terminal));
		commandLine.addSubcommand(new ComputeCommand(terminal));
		commandLine.addSubcommand(new DrawCommand(terminal));
		commandLine.addSubcommand(new AcceptCommand(terminal));
		commandLine.addSubcommand(new ConfigCommand(terminal));
		commandLine.addSubcommand(new FormatCommand(terminal));
		commandLine.addSubcommand(new ExplainCommand(terminal));
		commandLine.addSubcommand(new PluginsCommand(terminal));
		commandLine.addSubcommand(new ServeCommand(terminal));
		commandLine.addSubcommand(new CommandLine.HelpCommand());
		// the whole usage after a slip of the finger would push the message off the screen
		commandLine.setParameterExceptionHandler((slip, given) -> {
			String command = slip.getCommandLine().getCommandSpec().qualifiedName();
			terminal.err().println("hullwright: " + slip.getMessage().replaceFirst("^Error: ", "") + suggestion(slip));
			terminal.err().println("Try '" + command + " --help'.");
			return ExitStatus.INCOMPLETE;
		});
		return commandLine;
	}

	private static String suggestion(CommandLine.ParameterException slip) {
		List<String> near = slip instanceof CommandLine.UnmatchedArgumentException unmatched ? unmatched.getSuggestions() : List.of();
		return near.isEmpty() ? "" : "; did you mean '" + near.get(0) + "'?";
	}
}
