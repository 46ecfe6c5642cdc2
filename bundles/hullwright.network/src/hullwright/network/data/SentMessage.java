/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

import java.util.Optional;

/**
 * A message that a device on board tells, as it is set.
 *
 * @param use the message and its key value
 * @param timing how often
 * @param instance the data instance, if the message has one
 * @param port the port that it is told on; any, if empty
 */
public record SentMessage(MessageUse use, Timing timing, Optional<Integer> instance, Optional<String> port) {
}
