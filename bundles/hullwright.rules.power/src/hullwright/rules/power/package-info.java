/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Rules about how the network is fed: supplies, voltages, currents, fuses, earths. One class and one page each.
 */
package hullwright.rules.power;
