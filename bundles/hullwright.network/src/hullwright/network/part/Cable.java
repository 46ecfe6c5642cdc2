/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import hullwright.quantity.ConductorSize;
import hullwright.quantity.Current;
import hullwright.quantity.DelayPerLength;
import hullwright.quantity.Length;
import hullwright.quantity.Resistance;
import hullwright.quantity.ResistancePerLength;
import java.util.List;
import java.util.Optional;

/**
 * A cable of which backbones and drops are made.
 *
 * @param identity its name and where its values come from
 * @param ends its moulded connectors, none for cable by the metre
 * @param power the power conductors
 * @param signal the signal conductors
 * @param rated the current that the power conductors may carry
 * @param delay how long a signal takes
 * @param impedance the characteristic impedance of the signal pair
 * @param longestBackbone how long a backbone of this cable alone may be
 * @param stock the moulded lengths that can be bought
 */
public record Cable(PartIdentity identity, Ends ends, Optional<Conductor> power, Optional<Conductor> signal, Optional<Current> rated,
		Optional<DelayPerLength> delay, Optional<Resistance> impedance, Optional<Length> longestBackbone, List<Length> stock) implements Part {

	public Cable {
		stock = List.copyOf(stock);
	}

	/**
	 * One conductor of a pair.
	 *
	 * @param size its gauge or cross-section
	 * @param declaredResistance the resistance that the catalog declares; it wins over the one that follows from the size
	 */
	public record Conductor(ConductorSize size, Optional<ResistancePerLength> declaredResistance) {
	}
}
