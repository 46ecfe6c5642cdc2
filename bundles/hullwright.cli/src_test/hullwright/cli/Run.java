/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * One run of the program: what it printed, and what it ended with.
 *
 * @param status the exit status
 * @param out what it printed as its result
 * @param err what it printed about itself
 */
record Run(int status, String out, String err) {

	static Run of(String... arguments) {
		return of(false, arguments);
	}

	static Run of(boolean coloured, String... arguments) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		int status = Main.run(arguments, new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), coloured);
		return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}
}
