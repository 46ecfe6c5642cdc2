/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.Optional;

import hullwright.quantity.Current;
import hullwright.quantity.Voltage;

/**
 * What a device gets from its network.
 *
 * @param device the qualified name of the device
 * @param network the qualified name of the network
 * @param branch the qualified name of the drop, or of the part in the backbone, that it hangs on
 * @param fed whether a supply is on that reaches it
 * @param voltage between its two power contacts
 * @param shift the potential of its return contact above the common negative of the boat
 * @param current what it draws
 * @param drop by how much its voltage lies below the highest at which a supply enters its section, if it is fed
 * @param aboveLowest how far its voltage lies above the lowest that it works at, if a catalog states that; negative if below
 * @param belowHighest how far its voltage lies below the highest that it bears, if a catalog states that; negative if above
 */
public record DeviceReading(String device, String network, String branch, boolean fed, Voltage voltage, Voltage shift, Current current,
		Optional<Voltage> drop, Optional<Voltage> aboveLowest, Optional<Voltage> belowHighest) {
}
