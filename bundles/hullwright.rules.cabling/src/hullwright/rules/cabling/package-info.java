/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Rules about how the network is laid out: terminators, lengths, joints. One class and one page each.
 */
package hullwright.rules.cabling;
