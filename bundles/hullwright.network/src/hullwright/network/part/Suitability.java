/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Optional;
import java.util.Set;

import hullwright.quantity.Length;

/**
 * Where a part may be fitted.
 *
 * @param zones the zones it is made for; none if the catalog does not say
 * @param compassDistance how far it must stay from a magnetic compass, if the catalog says
 */
public record Suitability(Set<Zone> zones, Optional<Length> compassDistance) {

	/** The catalog says nothing. */
	public static final Suitability UNSTATED = new Suitability(Set.of(), Optional.empty());

	public Suitability {
		zones = Set.copyOf(zones);
	}
}
