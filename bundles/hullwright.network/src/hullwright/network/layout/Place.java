/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.layout;

import java.util.Optional;
import java.util.Set;

import hullwright.network.Origin;
import hullwright.network.part.Zone;

/**
 * A place on board.
 *
 * @param name its name
 * @param title what people call it
 * @param zones what it asks of parts; dry, if none
 * @param nearCompass whether a magnetic compass is close by
 * @param above the name of the place that it lies over, if the text says
 * @param origin its place in the text
 */
public record Place(String name, String title, Set<Zone> zones, boolean nearCompass, Optional<String> above, Origin origin) {

	public Place {
		zones = Set.copyOf(zones);
	}
}
