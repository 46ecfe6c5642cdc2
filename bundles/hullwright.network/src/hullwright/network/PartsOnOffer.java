/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import hullwright.network.part.Part;
import java.util.List;

/**
 * The parts that a series can name, in the order of its catalogs: its own first, then the imported ones.
 *
 * @param parts the parts
 */
public record PartsOnOffer(List<Part> parts) {

	public PartsOnOffer {
		parts = List.copyOf(parts);
	}

	/** The parts of one kind. */
	public <P extends Part> List<P> of(Class<P> kind) {
		return parts.stream().filter(kind::isInstance).map(kind::cast).toList();
	}
}
