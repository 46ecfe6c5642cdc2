/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.analysis.line;

import hullwright.network.Drop;
import hullwright.network.Network;
import hullwright.quantity.Length;
import java.util.List;
import java.util.function.Function;

/**
 * A branch off the backbone.
 *
 * @param drop the qualified name of the drop that begins it
 * @param from the qualified name of the part of the backbone that it begins at
 * @param farthest the qualified name of the drop at whose end it reaches farthest
 * @param length how far that is from the backbone
 * @param total all of its cable, side branches included
 */
public record Stub(String drop, String from, String farthest, Length length, Length total) {

	/** The branches of a network, in the order of the text. */
	public static List<Stub> of(Network network, Function<Drop, DropLength> lengthOf) {
		return Stubs.of(network, lengthOf);
	}
}
