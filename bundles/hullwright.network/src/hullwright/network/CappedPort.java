/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import hullwright.network.part.Cap;

/**
 * A port that is closed by a blank cap.
 *
 * @param port the port
 * @param cap the cap
 * @param origin its place in the text
 */
public record CappedPort(PortRef port, Cap cap, Origin origin) {
}
