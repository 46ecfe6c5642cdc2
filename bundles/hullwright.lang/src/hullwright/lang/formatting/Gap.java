/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.formatting;

/**
 * White space of a text, and what shall stand in its place.
 *
 * @param offset where it begins, in characters
 * @param end where it ends
 * @param replacement the white space of the canonical layout
 */
record Gap(int offset, int end, String replacement) {
}
