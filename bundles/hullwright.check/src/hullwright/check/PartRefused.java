/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

/**
 * Says in a sentence for the person why a part cannot be put into a text.
 */
public final class PartRefused extends Exception {

	private static final long serialVersionUID = 1L;

	PartRefused(String sentence) {
		super(sentence);
	}
}
