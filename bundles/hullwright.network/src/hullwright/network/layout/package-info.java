/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Where things are on board: places, what divides them, and the ways that cables take between them.
 */
package hullwright.network.layout;
