/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Optional;

import hullwright.quantity.Duration;

/**
 * A radio of a device.
 *
 * @param clients how many others it can serve, if the catalog says
 * @param delay how long a message takes over it, if the catalog says
 */
public record Radio(Optional<Integer> clients, Optional<Duration> delay) {
}
