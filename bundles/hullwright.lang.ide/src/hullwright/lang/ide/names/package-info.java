/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Where a name stands: its declaration, all its uses over the files of a project, and what it takes to change it.
 */
package hullwright.lang.ide.names;
