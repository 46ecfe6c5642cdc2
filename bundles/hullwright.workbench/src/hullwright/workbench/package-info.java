/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The window: application, perspective, menus, and what a person finds on the first start.
 */
package hullwright.workbench;
