/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.cli;

/**
 * What was asked cannot be done; the message says why, for the person who asked.
 */
final class Refusal extends RuntimeException {

	private static final long serialVersionUID = 1L;

	Refusal(String message) {
		super(message);
	}
}
