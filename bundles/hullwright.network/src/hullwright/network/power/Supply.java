/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.power;

import java.util.List;
import java.util.Optional;

import hullwright.network.Origin;
import hullwright.network.part.Fuse;

/**
 * A breaker that can feed networks.
 *
 * @param name the qualified name
 * @param title what people call it
 * @param from the qualified name of the bank or converter behind it; a bank of its own, if empty
 * @param voltages what voltage it gives: its own, or if it says nothing that of what is behind it
 * @param switches the switches that must be on, one after the other
 * @param fuse the fuse or breaker in its supply conductor, if any
 * @param lead the wire from it to the network, if the text says
 * @param sharedWith other consumers on the same breaker
 * @param origin its place in the text
 */
public record Supply(String name, String title, Optional<String> from, Voltages voltages, List<String> switches,
		Optional<Fuse> fuse, Optional<SupplyLead> lead, List<String> sharedWith, Origin origin) {

	public Supply {
		switches = List.copyOf(switches);
		sharedWith = List.copyOf(sharedWith);
	}
}
