/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What devices tell each other: messages, who tells them and how often, who wants them, who turns them into others.
 */
package hullwright.network.data;
