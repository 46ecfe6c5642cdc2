/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Small edits of .hull text that keep comments, line ends and layout outside what they change.
 */
package hullwright.lang.edit;
