/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The resistance of copper conductors.
 */
package hullwright.analysis.conductor;
