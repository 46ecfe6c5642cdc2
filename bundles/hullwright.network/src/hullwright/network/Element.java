/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import hullwright.network.part.Connector;
import java.util.Optional;

/**
 * One thing in the run of a backbone or of a drop.
 */
public sealed interface Element permits CableRun, Fitting {

	/** The qualified name. */
	String name();

	/** The place in the text. */
	Origin origin();

	/** Whether it lies the other way round than its catalog writes it. */
	boolean turned();

	/** The connector towards the start of the run; empty for cable without moulded ends. */
	Optional<Connector> towardsStart();

	/** The connector towards the end of the run; empty for cable without moulded ends. */
	Optional<Connector> towardsEnd();

	/** The same element lying this way. */
	Element turned(boolean turned);
}
