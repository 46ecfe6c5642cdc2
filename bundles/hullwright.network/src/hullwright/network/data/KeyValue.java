/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.data;

/**
 * What one source states in a key field.
 *
 * @param field the field: reference
 * @param value the value: magnetic
 */
public record KeyValue(String field, String value) {
}
