/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Rules about what devices tell each other: sources, keys, loads, serial lines. One class and one page each.
 */
package hullwright.rules.data;
