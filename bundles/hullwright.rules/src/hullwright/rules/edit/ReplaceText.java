/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;

/**
 * Replaces what stands at a place by another text, for problems of the text itself.
 *
 * @param place the place
 * @param replacement what is to stand there
 */
public record ReplaceText(Origin place, String replacement) implements EditIntent {
}
