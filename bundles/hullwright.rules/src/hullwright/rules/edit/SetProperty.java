/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;

/**
 * Sets one property in the braces of an element, where it replaces the statement that begins with the same words and, if it
 * says so at its end, is for the same message; the braces are made if there are none.
 *
 * @param element an element that can have properties in braces: a device, a supply, a bank, a converter, a serial line
 * @param property the word or words that the statement begins with, for example {@code device instance}
 * @param value what follows, in the words of the language, for example {@code 1} or
 *     {@code 1 for 127488}; empty if the words say it all
 */
public record SetProperty(Origin element, String property, String value) implements EditIntent {
}
