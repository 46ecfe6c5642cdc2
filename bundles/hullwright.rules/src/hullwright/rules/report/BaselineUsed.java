/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.report;

/**
 * The baseline that a check was held against.
 *
 * @param file the file
 * @param sha256 the SHA-256 of its bytes, in hexadecimal
 * @param entries how many findings it accepts
 * @param tolerance by which part of its limit a finding may have moved further from it and still be no worse, such as 0.05
 */
public record BaselineUsed(String file, String sha256, int entries, double tolerance) {
}
