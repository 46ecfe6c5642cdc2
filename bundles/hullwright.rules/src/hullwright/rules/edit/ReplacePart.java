/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.edit;

import hullwright.network.Origin;
import hullwright.network.part.PartIdentity;

/**
 * Fits another part of the catalog in place of one: where an element names the part that it is, or that it is made of.
 *
 * @param element the element: a part of a backbone, a drop with its adapters and its device, a feed, a cable
 * @param old the part that it names today
 * @param part the part that it is to name
 */
public record ReplacePart(Origin element, PartIdentity old, PartIdentity part) implements EditIntent {
}
