/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Names in the editor: to their declaration, to their uses, and what it takes to change them.
 */
package hullwright.workbench.names;
