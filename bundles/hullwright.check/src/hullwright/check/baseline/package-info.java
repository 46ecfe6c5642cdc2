/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Findings that were there when somebody looked, so that a check tells only what is new or has become worse.
 */
package hullwright.check.baseline;
