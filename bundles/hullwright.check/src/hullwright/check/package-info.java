/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The engine: from the files of a project to a report. {@link hullwright.check.Checker#check} is the only door, for the
 * command line, the window and every other editor.
 */
package hullwright.check;
