/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Tests in the real window, from the outside: what a person types, sees and chooses.
 */
package hullwright.workbench.tests;
