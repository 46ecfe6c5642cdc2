/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What a check found and what it did to find it, as data. Text, JSON and the window are made of this.
 */
package hullwright.rules.report;
