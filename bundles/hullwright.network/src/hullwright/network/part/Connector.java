/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

/**
 * One connector of a part.
 *
 * @param family its connector family
 * @param gender pins or sockets
 */
public record Connector(ConnectorFamily family, Gender gender) {

	/** Whether the two plug into each other. A family goes by its name, in whichever catalog it stands. */
	public boolean mates(Connector other) {
		return family.name().equals(other.family.name()) && gender == other.gender.opposite();
	}

	@Override
	public String toString() {
		return family.name() + " " + gender.name().toLowerCase(java.util.Locale.ROOT);
	}
}
