/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.traffic;

import hullwright.quantity.Duration;

/**
 * When a message is sent.
 *
 * @param regular whether it is sent regularly, else when something happens
 * @param interval the time from one to the next; if it is not regular, the least
 */
public record Release(boolean regular, Duration interval) {
}
