/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Help with writing a .hull text: comments, layout, brackets, indentation, marks at the uses of a name.
 */
package hullwright.workbench.writing;
