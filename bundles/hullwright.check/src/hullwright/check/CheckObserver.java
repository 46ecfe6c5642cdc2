/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.check;

/**
 * Looks on while a check runs, and can call it off. Called by the thread that asked for the check.
 */
@FunctionalInterface
public interface CheckObserver {

	/** Whether the check is called off; asked between boats, also by other threads. */
	boolean cancelled();

	/**
	 * Told now and then, and at the end of each series.
	 *
	 * @param checked how many boats are done
	 * @param boats how many there are in all
	 */
	default void progress(int checked, int boats) {
		// most only want to be able to call it off
	}
}
