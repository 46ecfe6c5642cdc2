/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

import picocli.CommandLine.Option;

/**
 * The option that every sub-command has.
 */
final class HelpOption {

	@Option(names = { "-h", "--help" }, usageHelp = true, description = "Show this help.")
	private boolean asked;
}
