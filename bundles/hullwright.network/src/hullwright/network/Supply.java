/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import hullwright.quantity.ConductorSize;
import hullwright.quantity.Current;
import hullwright.quantity.Length;
import hullwright.quantity.Voltage;
import java.util.Optional;

/**
 * A bank or a breaker that can feed networks.
 *
 * @param name the name within the series
 * @param nominal the nominal voltage
 * @param lowest the voltage of the bank when nearly empty
 * @param highest the voltage of the bank while it is charged
 * @param switchName the switch that turns it on, empty if none
 * @param fuse the fuse or breaker in its supply conductor
 * @param leadLength the length of one of the two wires to the network
 * @param leadSize the size of each of these wires
 * @param origin its place in the text
 */
public record Supply(String name, Optional<Voltage> nominal, Optional<Voltage> lowest, Optional<Voltage> highest,
		String switchName, Optional<Current> fuse, Optional<Length> leadLength, Optional<ConductorSize> leadSize, Origin origin) {
}
