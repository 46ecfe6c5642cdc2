/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.tests.data;

/**
 * The text of a bus without anything that a test about data would care for: one connector family, and a block with a port for each device.
 */
final class BusText {

	/** What a catalog says of connectors, terminators, blocks and cable. */
	static final String HARDWARE = """
			  family f "Invented" { vendor }
			  terminator end { end f male; 120 ohm }
			  tee block { backbone f male, f female; ports 1..9 : f female }
			  cable wire { ends f male, f female }
			""";

	private BusText() {
	}

	/**
	 * A network.
	 *
	 * @param drops what each port leads to, a line each
	 */
	static String network(String name, String drops) {
		StringBuilder text = new StringBuilder("network " + name + " { backbone of wire { terminator a : end\n tee t : block\n terminator z : end }\n");
		int port = 1;
		for (String drop : drops.strip().split("\n")) {
			if (!drop.isBlank()) {
				text.append("drop t.").append(port++).append(" to ").append(drop.strip()).append("\n");
			}
		}
		return text.append("}\n").toString();
	}
}
