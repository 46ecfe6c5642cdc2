/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.circuit;

/**
 * How the current of a load follows its voltage.
 */
public enum LoadLaw {
	/** I = value, in A. */
	CURRENT,
	/** I = U / value, the value in ohm. */
	RESISTANCE,
	/** I = value / U, the value in W. */
	POWER
}
