/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What the supply does on a boat: voltages at the devices, currents in every cable and contact, the shift of the return.
 * Computed on the real circuit of both conductors; published simple formulas stand beside for comparison.
 *
 * <p>The model, in short. 0 V is the common negative of all banks. A bank is an ideal voltage behind its internal
 * resistance; a supply adds its fuse, and for each place where it enters a network a lead of two wires. Every mated pair of
 * connectors is one contact in each conductor. Tees, isolators, feed-throughs and switches add no resistance of their own.
 * A device draws between its two power contacts. What no catalog states is assumed, and every assumption is told with the
 * result ({@link hullwright.analysis.power.Assumption}).
 */
package hullwright.analysis.power;
