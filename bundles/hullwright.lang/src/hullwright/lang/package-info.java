/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The language of .hull files: grammar, names, units, and the rendering of edits.
 */
package hullwright.lang;
