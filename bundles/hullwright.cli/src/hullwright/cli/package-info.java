/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The command line: reads what is asked, calls the engine, writes the report.
 */
package hullwright.cli;
