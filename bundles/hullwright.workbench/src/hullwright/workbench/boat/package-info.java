/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The boat in view: which one it is, who shows it, and what the network looks like on it.
 */
package hullwright.workbench.boat;
