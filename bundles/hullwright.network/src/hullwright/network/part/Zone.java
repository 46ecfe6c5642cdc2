/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

/**
 * What a place asks of the parts that are fitted there.
 */
public enum Zone {
	/** Nothing. */
	DRY,
	/** Spray or standing water. */
	WET,
	/** The heat of engines. */
	HOT,
	/** Weather and sun. */
	OUTSIDE,
	/** Petrol vapour may gather: only what is protected against ignition. */
	VAPOUR
}
