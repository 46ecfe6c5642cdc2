/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;

/**
 * Sets one property in the braces of an element, where it replaces the statement that begins with the same word; the braces
 * are made if there are none.
 *
 * @param element an element that can have properties in braces: a device, a supply, a bank, a converter, a serial line
 * @param property the word or words that the statement begins with, for example {@code engine}; empty for a bare quantity
 * @param value what follows, in the words of the language, for example {@code 1}; empty if the word says it all
 */
public record SetProperty(Origin element, String property, String value) implements EditIntent {
}
