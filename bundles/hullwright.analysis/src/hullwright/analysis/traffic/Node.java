/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

/**
 * A device as the other devices of a network see it.
 *
 * @param device its qualified name
 * @param addresses how many addresses it claims, at least 1
 */
public record Node(String device, int addresses) {
}
