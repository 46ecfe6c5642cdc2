/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A tee or a block: passes the backbone on and offers ports for drops.
 *
 * @param identity its name and where its values come from
 * @param ends its backbone connectors
 * @param ports its ports by number, each with its connector if the catalog says which
 */
public record Tee(PartIdentity identity, Ends ends, Map<Integer, Optional<Connector>> ports) implements Part {

	public Tee {
		ports = Collections.unmodifiableMap(new TreeMap<>(ports));
	}
}
