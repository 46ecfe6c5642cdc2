/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What a catalog says of the parts that boats are made of.
 */
package hullwright.network.part;
