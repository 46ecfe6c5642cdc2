/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import hullwright.lang.ide.HullServer;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/**
 * {@code hullwright serve}: the language server for other editors, over standard input and output.
 */
@Command(name = "serve", sortOptions = false,
		description = "Serves an editor by the Language Server Protocol over standard input and output: the same findings, fixes, completion, "
				+ "hover and outline as in the workbench. The editor starts it and ends it; nobody types here.",
		footer = { "", "Exit status: 0 the editor ended the session, 2 the connection broke." })
final class ServeCommand implements Callable<Integer> {

	private final Terminal terminal;

	@Mixin
	private HelpOption help;

	ServeCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	@Override
	public Integer call() throws InterruptedException {
		// what anybody prints by mistake must not get between the messages
		OutputStream messages = new FileOutputStream(FileDescriptor.out);
		System.setOut(System.err);
		try {
			HullServer.serve(System.in, messages);
			return ExitStatus.CLEAN;
		} catch (ExecutionException e) {
			terminal.err().println("hullwright: the connection to the editor broke: " + e.getCause().getMessage());
			return ExitStatus.INCOMPLETE;
		}
	}
}
