/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Serial lines of NMEA 0183: what goes over them against what they can carry, and whether their ends fit together.
 */
package hullwright.analysis.serial;
