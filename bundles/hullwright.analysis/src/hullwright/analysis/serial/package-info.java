/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Serial lines of NMEA 0183: what goes over them against what they can carry, and whether their ends fit together.
 *
 * <p>{@link hullwright.analysis.serial.SerialLineFigures} has the figures of one line,
 * {@link hullwright.analysis.serial.SerialRelays} those of devices that pass sentences on from line to line.
 */
package hullwright.analysis.serial;
