/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check.plugin;

/**
 * A jar cannot be a plugin; the message says why, of "it".
 */
final class PluginRefused extends Exception {

	private static final long serialVersionUID = 1L;

	/** Refuses with a reason in words. */
	PluginRefused(String reason) {
		super(reason);
	}
}
