/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

/**
 * A side of a part in a backbone, as the text tells the backbone.
 */
public enum BackboneSide {
	/** The side towards its start. */
	TOWARDS_START,
	/** The side towards its end. */
	TOWARDS_END
}
