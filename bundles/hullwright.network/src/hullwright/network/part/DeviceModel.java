/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Voltage;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.Collections;

/**
 * A device as a catalog describes it.
 *
 * @param identity its name and where its values come from
 * @param lead the cable that is part of it, if any
 * @param ports its own connectors by name
 * @param ownSupply whether it is fed from elsewhere
 * @param isolated whether its own supply is isolated from the network
 * @param lowest the lowest voltage it works at
 * @param highest the highest voltage it bears
 * @param load what it draws from the network
 */
public record DeviceModel(PartIdentity identity, Optional<Lead> lead, Map<String, Connector> ports, boolean ownSupply, boolean isolated,
		Optional<Voltage> lowest, Optional<Voltage> highest, Optional<Current> load) implements Part {

	public DeviceModel {
		ports = Collections.unmodifiableMap(new TreeMap<>(ports));
	}

	/** The connector that meets the drop: that of the lead, else the only port, else none that can be told. */
	@Override
	public Ends ends() {
		Optional<Connector> own = lead.isPresent()
				? lead.get().connector()
				: ports.size() == 1 ? Optional.of(ports.values().iterator().next()) : Optional.empty();
		return new Ends(own, Optional.empty());
	}

	/**
	 * A cable that is part of a device.
	 *
	 * @param length how long it is; it counts as part of the drop
	 * @param connector the connector at its free end
	 */
	public record Lead(Length length, Optional<Connector> connector) {
	}
}
