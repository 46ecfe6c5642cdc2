/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What a rule is made of. A rule is one class that implements {@link hullwright.rules.BoatRule}, one page of Markdown of the
 * same name beside it, and one registration at the extension point {@code hullwright.rules.rule}.
 */
package hullwright.rules;
