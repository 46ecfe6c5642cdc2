/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.data;

import hullwright.network.data.MessageUse;
import java.util.Optional;

/**
 * Where data begin: a device that tells a message of its own.
 *
 * @param device the qualified name of the device
 * @param use the message and its key value
 * @param instance the data instance, if the message has one
 */
public record DataSource(String device, MessageUse use, Optional<Integer> instance) {
}
