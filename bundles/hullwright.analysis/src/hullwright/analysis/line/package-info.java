/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The signal line: lengths along the backbone and of the drops, and where it is terminated.
 */
package hullwright.analysis.line;
