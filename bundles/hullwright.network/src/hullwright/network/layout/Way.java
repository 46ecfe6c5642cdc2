/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.layout;

import java.util.Optional;

import hullwright.quantity.Length;

/**
 * The way that a cable must reach.
 *
 * @param length how long it is
 * @param route the named route that it follows, if one is named
 */
public record Way(Length length, Optional<String> route) {
}
