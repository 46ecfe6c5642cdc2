/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

/**
 * Something that carries messages between devices.
 *
 * @param kind what it is
 * @param name its qualified name
 */
public record Carrier(Kind kind, String name) {

	/** What can carry messages. */
	public enum Kind {
		/** A network: every device on it hears every other. */
		NETWORK,
		/** A serial line, from its talker to its listeners. */
		SERIAL_LINE,
		/** A wireless hop, from its senders to its receivers. */
		WIRELESS
	}
}
