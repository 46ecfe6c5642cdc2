/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Rules about a series as a whole: what it offers, what it sells, which parts it takes. One class and one page each.
 */
package hullwright.rules.series;
