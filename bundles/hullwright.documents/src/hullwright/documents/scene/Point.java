/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.documents.scene;

/**
 * A place in a picture, x to the right and y down, in points of which 96 make an inch at natural size.
 *
 * @param x to the right
 * @param y down
 */
public record Point(double x, double y) {
}
