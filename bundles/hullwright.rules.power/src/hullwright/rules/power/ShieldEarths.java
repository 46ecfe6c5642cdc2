/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.rules.power;

import hullwright.network.Backbone;
import hullwright.network.Element;
import hullwright.network.Feed;
import hullwright.network.Fitting;
import hullwright.network.Network;
import hullwright.network.Origin;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the shield of a network is joined to earth on purpose.
 */
final class ShieldEarths {

	private ShieldEarths() {
	}

	static List<Origin> of(Network network) {
		List<Origin> earths = new ArrayList<>();
		for (Backbone backbone : network.backbones()) {
			for (Element element : backbone.elements()) {
				if (element instanceof Fitting fitting && fitting.details().earthsShield()) {
					earths.add(fitting.origin());
				}
			}
		}
		network.feeds().stream().filter(Feed::earthsShield).map(Feed::origin).forEach(earths::add);
		return earths;
	}
}
