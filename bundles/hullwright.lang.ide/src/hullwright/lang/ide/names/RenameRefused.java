/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.names;

/**
 * Why a name cannot be changed, in a sentence for the person.
 */
final class RenameRefused extends Exception {

	private static final long serialVersionUID = 1L;

	RenameRefused(String sentence) {
		super(sentence);
	}
}
