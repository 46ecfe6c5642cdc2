/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

/**
 * Which half of a connector.
 */
public enum Gender {
	/** Pins. */
	MALE,
	/** Sockets. */
	FEMALE;

	/** The half that mates with this one. */
	public Gender opposite() {
		return this == MALE ? FEMALE : MALE;
	}
}
