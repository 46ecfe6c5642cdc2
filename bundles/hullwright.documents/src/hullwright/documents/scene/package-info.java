/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * A picture as data: shapes in a plane, with the elements that they stand for. Whoever shows it, a file or a window, needs to
 * know nothing of boats.
 */
package hullwright.documents.scene;
