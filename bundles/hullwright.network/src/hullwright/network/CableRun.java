/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import hullwright.network.part.Cable;
import hullwright.network.part.Connector;
import hullwright.quantity.Length;
import java.util.Optional;

/**
 * A piece of cable.
 *
 * @param name the qualified name, derived from its neighbours if the text gives none
 * @param cable what it is made of, or empty if the text does not say
 * @param length how long it is
 * @param turned whether it lies the other way round than the catalog writes its ends
 * @param origin its place in the text
 */
public record CableRun(String name, Optional<Cable> cable, Length length, boolean turned, Origin origin) implements Element {

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
		return new CableRun(name, cable, length, otherWay, origin);
	}
}
