/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.baseline;

/**
 * A file that cannot be used as a baseline. The message names the file, the place in it, and what was expected.
 */
public final class UnusableBaseline extends Exception {

	private static final long serialVersionUID = 1;

	UnusableBaseline(String message) {
		super(message);
	}
}
