/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;

/**
 * Exchanges words that are said of an element outside of braces, such as {@code earths shield} of a tap.
 *
 * @param element a part of a backbone or a feed
 * @param old the words that are said today; empty to say something more, at the end and before a condition
 * @param words the words that are to be said; empty to say nothing of it any more
 */
public record Reword(Origin element, String old, String words) implements EditIntent {
}
