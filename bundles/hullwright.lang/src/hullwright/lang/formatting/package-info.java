/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The one layout of .hull text: only white space between its words is changed, never a word or a comment.
 */
package hullwright.lang.formatting;
