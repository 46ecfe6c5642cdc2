/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Texts to begin with: a project, a series, a part, a hull, a waiver. Each parses, has no findings and is laid out as the
 * formatter would.
 */
package hullwright.lang.ide.starter;
