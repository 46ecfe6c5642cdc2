/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The view of the parts that a project can use.
 */
package hullwright.workbench.catalog;
