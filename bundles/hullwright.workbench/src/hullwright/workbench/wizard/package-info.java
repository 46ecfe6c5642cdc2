/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Wizards that make projects and write texts to begin with. Each shows what it will write before it does.
 */
package hullwright.workbench.wizard;
