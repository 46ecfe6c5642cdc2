/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

/**
 * One connector of a part.
 *
 * @param family the name of the connector family
 * @param gender pins or sockets
 */
public record Connector(String family, Gender gender) {

	/** Whether the two plug into each other. */
	public boolean mates(Connector other) {
		return family.equals(other.family) && gender == other.gender.opposite();
	}

	@Override
	public String toString() {
		return family + " " + gender.name().toLowerCase(java.util.Locale.ROOT);
	}
}
