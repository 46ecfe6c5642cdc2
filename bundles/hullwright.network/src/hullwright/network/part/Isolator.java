/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

/**
 * A part that separates the supplies of two sections of a backbone.
 *
 * @param identity what it is called
 * @param ends its connectors
 * @param breaksSupply whether the supply conductor ends here
 * @param joinsReturn whether the return conductor goes through
 */
public record Isolator(PartIdentity identity, Ends ends, boolean breaksSupply, boolean joinsReturn) implements Part {
}
