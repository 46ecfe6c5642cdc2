/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;

/**
 * One boat as it will be built.
 *
 * @param series the name of the hull series
 * @param revision the revision of the text, empty if it states none
 * @param selection which boat of the series it is
 * @param networks its data networks, in the order of the text
 * @param supplies what can feed them, in the order of the text
 * @param partsOnOffer the parts of all catalogs that the series can name, for fixes that propose one
 * @param origin the series in the text
 */
public record Boat(String series, String revision, Selection selection, List<Network> networks, List<Supply> supplies,
		PartsOnOffer partsOnOffer, Origin origin) {

	public Boat {
		networks = List.copyOf(networks);
		supplies = List.copyOf(supplies);
	}
}
