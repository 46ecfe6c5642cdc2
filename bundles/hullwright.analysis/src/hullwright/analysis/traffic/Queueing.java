/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

/**
 * In which order the controller of a device sends what waits in it.
 */
public enum Queueing {
	/** The most urgent message first. */
	BY_PRIORITY,
	/** In the order in which the messages came. */
	FIRST_IN_FIRST_OUT
}
