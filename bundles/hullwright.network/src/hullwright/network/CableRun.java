/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.Optional;

import hullwright.network.layout.Way;
import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.quantity.Length;

/**
 * A length of cable.
 *
 * @param name the qualified name
 * @param cable what it is made of; empty if the text does not say
 * @param length how long the fitted piece is
 * @param way the way that it must reach, if the text says
 * @param turned whether it lies the other way round than its catalog writes it
 * @param origin its place in the text
 */
public record CableRun(String name, Optional<Cable> cable, Length length, Optional<Way> way, boolean turned, Origin origin)
		implements Element {

	@Override
	public Optional<Connector> towardsStart() {
		return cable.flatMap(data -> data.ends().towardsStart(turned));
	}

	@Override
	public Optional<Connector> towardsEnd() {
		return cable.flatMap(data -> data.ends().towardsEnd(turned));
	}

	@Override
	public CableRun turned(boolean otherWay) {
		return new CableRun(name, cable, length, way, otherWay, origin);
	}
}
