/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What physics and counting make of a boat: pure functions from network records to typed results. All physics of the
 * project is here; nothing here knows Eclipse.
 */
package hullwright.analysis;
