/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.report;

/**
 * A file that the check read, so that a report says what it speaks of.
 *
 * @param file the file, relative to the project, or the import of a built-in catalog
 * @param role what it declares: catalog, series, profile, or several of them
 * @param sha256 the SHA-256 of its bytes, in hexadecimal
 */
public record SourceFile(String file, String role, String sha256) {
}
