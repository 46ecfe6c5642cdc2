/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

import java.util.Optional;

/**
 * A message that a kind of device tells.
 *
 * @param use the message and its key value
 * @param timing how often; that of the message, where the device says nothing
 * @param instances how many of it, each with a data instance of its own; at least 1
 * @param settable whether each boat sets the data instance
 * @param instance the data instance, where it is fixed
 * @param port the port that it is told on; any, if empty
 */
public record Sending(MessageUse use, Timing timing, int instances, boolean settable, Optional<Integer> instance,
		Optional<String> port) {
}
