/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.serial;

import hullwright.network.DevicePortRef;

/**
 * A talker and what its line joins it to.
 *
 * @param talker the port that talks
 * @param other the port that it is joined to: one that listens, unless the text joins two that talk
 * @param level whether the signal of the one can drive the other
 * @param currentPath whether a current path from ground to ground is there, since neither port is isolated as far as their
 *        catalogs say; none is wanted (digital-interface appendices of public installation manuals)
 */
public record Joint(DevicePortRef talker, DevicePortRef other, LevelFit level, boolean currentPath) {
}
