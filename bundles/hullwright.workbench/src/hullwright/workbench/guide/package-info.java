/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Guided steps for whoever is new.
 */
package hullwright.workbench.guide;
