/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide.completion;

import hullwright.network.part.Adapter;
import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.network.part.DeviceModel;
import hullwright.network.part.Ends;
import hullwright.network.part.Part;
import hullwright.network.part.Terminator;
import java.util.List;
import java.util.Optional;

/**
 * Which parts go on where a connector stands open.
 *
 * @param open     the connector; empty if nothing says which, so that everything goes
 * @param adapters the adapters that the text can name
 */
record MatingParts(Optional<Connector> open, List<Adapter> adapters) {

	/** Whether a part goes on as it is. */
	boolean goesOn(Part part) {
		return open.isEmpty() || goesOn(part, open.get());
	}

	private static boolean goesOn(Part part, Connector open) {
		if (part instanceof DeviceModel device) {
			// a device without a connector on the bus is joined by other means, which a drop does not end at
			return device.lead().isPresent() && device.lead().get().connector().isEmpty() || device.ends().first().filter(open::mates).isPresent()
					|| device.lead().isEmpty() && device.ports().values().stream().anyMatch(open::mates);
		}
		Ends ends = part.ends();
		boolean bare = part instanceof Cable && ends.first().isEmpty();
		boolean first = ends.first().filter(open::mates).isPresent();
		boolean second = ends.second().filter(open::mates).isPresent();
		return bare || first || second && !(part instanceof Terminator terminator && terminator.inLine() && ends.first().isEmpty());
	}

	/** The adapter by which a part goes on, if it does not without one. */
	Optional<Adapter> adapterFor(Part part) {
		return open.isEmpty() ? Optional.empty() : adapters.stream().filter(adapter -> between(adapter.ends(), part)).findFirst();
	}

	private boolean between(Ends ends, Part part) {
		Connector near = open.orElseThrow();
		return ends.first().filter(near::mates).isPresent() && ends.second().filter(far -> goesOn(part, far)).isPresent()
				|| ends.second().filter(near::mates).isPresent() && ends.first().filter(far -> goesOn(part, far)).isPresent();
	}
}
