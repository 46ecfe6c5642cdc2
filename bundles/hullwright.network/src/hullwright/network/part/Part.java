/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

/**
 * A part as a catalog describes it.
 */
public sealed interface Part permits Cable, Terminator, Tee, Tap, Isolator, FeedThrough, Adapter, Cap, Cord,
		FuseKind, DeviceModel {

	/** What every part has. */
	PartIdentity identity();

	/** Its connectors in the run of a backbone or a drop. */
	Ends ends();
}
