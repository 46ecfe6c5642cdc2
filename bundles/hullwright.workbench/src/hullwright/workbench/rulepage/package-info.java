/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The view of the pages of rules, rendered from their Markdown.
 */
package hullwright.workbench.rulepage;
