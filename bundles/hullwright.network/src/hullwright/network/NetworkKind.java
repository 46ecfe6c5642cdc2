/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

/**
 * What a network is for, which decides the limits that apply to it.
 */
public enum NetworkKind {
	/** NMEA 2000 / IEC 61162-3: the instruments. */
	INSTRUMENT_BUS,
	/** The engine maker's bus. */
	ENGINE_BUS
}
