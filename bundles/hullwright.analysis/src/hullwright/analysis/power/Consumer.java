/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.power;

import java.util.Optional;

import hullwright.analysis.wiring.AttachedDevice;
import hullwright.network.part.Load;

/**
 * One load of a boat's circuit.
 *
 * @param name the qualified name of the device or converter
 * @param number its number in the circuit
 * @param plus the node that it draws from
 * @param minus the node that it gives back to
 * @param load what it draws, for the load of a device on its network
 * @param attached where the device hangs on the network, for such a load
 * @param draws what it draws otherwise: the constant current of a device from its own supply in A, 0 for the input of a converter
 */
record Consumer(String name, int number, int plus, int minus, Optional<Load> load, Optional<AttachedDevice> attached, double draws) {
}
