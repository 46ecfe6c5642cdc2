/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.ide;

/**
 * A file as it stands in an editor.
 *
 * @param uri     as the client spells it
 * @param version counts up with each change
 * @param text    all of it
 */
record OpenDocument(String uri, int version, String text) {
}
