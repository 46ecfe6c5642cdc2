/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Computed figures of boats, for people at a terminal and for programs.
 */
package hullwright.report.figures;
