/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import java.io.PrintStream;

/**
 * Where a command writes to.
 *
 * @param out for results
 * @param err for what went wrong
 * @param coloured whether a person sees the output on a terminal with colours
 */
record Terminal(PrintStream out, PrintStream err, boolean coloured) {
}
