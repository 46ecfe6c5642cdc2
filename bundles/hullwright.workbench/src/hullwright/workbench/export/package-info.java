/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Reports that are handed on as files.
 */
package hullwright.workbench.export;
