/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.Optional;

/**
 * A port of a part.
 *
 * @param part the qualified name of the part
 * @param port the number of the port; a free backbone end of the part, if empty
 */
public record PortRef(String part, Optional<Integer> port) {
}
