/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What the grammar tells about itself, for messages and layout.
 */
package hullwright.lang.grammar;
