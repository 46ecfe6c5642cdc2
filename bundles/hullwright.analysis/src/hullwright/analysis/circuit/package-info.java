/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Direct-current circuits of numbered nodes: the kernel that everything with a voltage in it is solved by. It knows nothing of
 * boats, and its numbers are plain SI values (V, A, ohm, W); typed quantities begin in the packages that use it.
 */
package hullwright.analysis.circuit;
