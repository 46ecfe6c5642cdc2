/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import hullwright.network.part.DeviceModel;
import java.util.Optional;

/**
 * A device on board.
 *
 * @param name the qualified name
 * @param model what it is
 * @param place where it is, if the text says
 * @param label what is written on it, empty if nothing
 * @param origin its place in the text
 */
public record FittedDevice(String name, DeviceModel model, Optional<String> place, String label, Origin origin) {
}
