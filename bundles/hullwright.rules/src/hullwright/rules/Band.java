/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules;

import hullwright.quantity.Quantity;

/**
 * From which value on a finding has which severity.
 *
 * @param severity the severity above the limit
 * @param limit the limit; a value that equals it keeps it
 * @param source where the limit was read
 */
public record Band(Severity severity, Quantity limit, String source) {
}
