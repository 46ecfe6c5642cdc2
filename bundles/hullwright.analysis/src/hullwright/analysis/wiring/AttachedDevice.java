/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.wiring;

import java.util.Optional;

import hullwright.network.FittedDevice;

/**
 * A device at a point of a network. A device on two networks is there twice.
 *
 * @param device the device
 * @param port its port there, if the text names one
 * @param point the point, behind its lead and its connector
 * @param network the number of the network within the boat
 * @param branch the qualified name of the drop, or of the part in the backbone, that it hangs on
 */
public record AttachedDevice(FittedDevice device, Optional<String> port, int point, int network, String branch) {
}
