/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

/**
 * What the process ends with. The higher beats the lower.
 */
final class ExitStatus {

	/** Everything was checked, and nothing weighs as much as {@code --fail-on} says. */
	static final int CLEAN = 0;
	/** There are findings that weigh as much as {@code --fail-on} says, or more. */
	static final int FINDINGS = 1;
	/** Not everything could be checked, or the command was not understood. */
	static final int INCOMPLETE = 2;

	private ExitStatus() {
	}
}
