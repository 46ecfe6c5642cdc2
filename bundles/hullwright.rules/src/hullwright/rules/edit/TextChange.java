/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

/**
 * A small change of a text.
 *
 * @param file the file, relative to the project
 * @param offset where, in characters from its start
 * @param length how many characters it replaces
 * @param replacement what stands there afterwards
 */
public record TextChange(String file, int offset, int length, String replacement) {
}
