/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Optional;

/**
 * The connectors of a part in the order in which its catalog writes them.
 *
 * @param first the first connector, if it has one
 * @param second the second connector, if it has one
 */
public record Ends(Optional<Connector> first, Optional<Connector> second) {

	/** A part without connectors. */
	public static final Ends NONE = new Ends(Optional.empty(), Optional.empty());

	/** The connector towards the start of a run. A part with one connector only shows it to both sides. */
	public Optional<Connector> towardsStart(boolean turned) {
		return turned ? second.or(() -> first) : first;
	}

	/** The connector towards the end of a run. A part with one connector only shows it to both sides. */
	public Optional<Connector> towardsEnd(boolean turned) {
		return turned ? first : second.or(() -> first);
	}
}
