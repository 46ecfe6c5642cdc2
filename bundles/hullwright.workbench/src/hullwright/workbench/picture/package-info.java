/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Shows pictures of {@code hullwright.documents} in a window: zoom, pan, tips, choosing things, export and print.
 */
package hullwright.workbench.picture;
