/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Who tells what to whom: the way of each message over networks, serial lines and wireless hops, through bridges that pass it on
 * and gateways that turn it into others.
 */
package hullwright.analysis.data;
