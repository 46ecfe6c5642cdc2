/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

/**
 * One port of one device.
 *
 * @param device the qualified name of the device
 * @param port the name of the port
 */
public record DevicePortRef(String device, String port) {
}
