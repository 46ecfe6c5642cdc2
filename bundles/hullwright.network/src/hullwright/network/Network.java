/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;

/**
 * One network of a boat: a backbone and what hangs on it.
 *
 * @param name the qualified name
 * @param kind what it is for
 * @param backbones its backbones; more than one is a mistake
 * @param drops its drops
 * @param feeds the supplies that enter it through ports
 * @param caps the ports that are closed
 * @param joins cables from port to port; each is a mistake
 * @param origin its place in the text
 */
public record Network(String name, NetworkKind kind, List<Backbone> backbones, List<Drop> drops, List<Feed> feeds,
		List<CappedPort> caps, List<Join> joins, Origin origin) {

	public Network {
		backbones = List.copyOf(backbones);
		drops = List.copyOf(drops);
		feeds = List.copyOf(feeds);
		caps = List.copyOf(caps);
		joins = List.copyOf(joins);
	}
}
