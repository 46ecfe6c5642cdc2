/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

/**
 * A change of one text.
 *
 * @param offset where, in characters from the start
 * @param length how many characters it replaces
 * @param replacement what stands there afterwards
 */
public record TextEdit(int offset, int length, String replacement) {
}
