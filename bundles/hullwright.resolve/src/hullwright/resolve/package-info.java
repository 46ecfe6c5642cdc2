/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * From what the text says to the boat that will be built: options and hulls applied, every part the right way round, every
 * element with its name and the place it came from. A series is copied out of EMF once, into a plan; from the plan any boat
 * is made without touching EMF again, by any number of threads.
 */
package hullwright.resolve;
