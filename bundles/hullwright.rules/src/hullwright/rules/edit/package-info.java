/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * What a fix wants done to the text, without saying how the text is to look.
 */
package hullwright.rules.edit;
