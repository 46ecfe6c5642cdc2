/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * All about the electrics of one boat, gathered for those who print or draw it.
 */
package hullwright.analysis.electrics;
