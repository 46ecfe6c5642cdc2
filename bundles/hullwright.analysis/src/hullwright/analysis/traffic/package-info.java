/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What messages are on the wire.
 */
package hullwright.analysis.traffic;
