/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

/**
 * Whom a device is set to listen to.
 *
 * @param use for which message
 * @param device the qualified name of the device that is listened to
 */
public record Taking(MessageUse use, String device) {
}
