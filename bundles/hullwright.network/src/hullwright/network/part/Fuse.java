/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Optional;

import hullwright.quantity.Current;

/**
 * A fuse or breaker that is fitted.
 *
 * @param rating its rating
 * @param kind what kind it is, if the text says
 */
public record Fuse(Current rating, Optional<FuseKind> kind) {
}
