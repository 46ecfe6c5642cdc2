/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Where power comes from: banks, converters, the supplies that feed networks, and the states in which they are on.
 */
package hullwright.network.power;
