/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network;

import java.util.List;

/**
 * One data network: what lies in its backbone, and what hangs on it.
 *
 * @param name the qualified name
 * @param kind what it is for
 * @param backbones its backbones; a sound network has exactly one
 * @param drops its drops, in the order of the text
 * @param origin its place in the text
 */
public record Network(String name, NetworkKind kind, List<Backbone> backbones, List<Drop> drops, Origin origin) {

	public Network {
		backbones = List.copyOf(backbones);
		drops = List.copyOf(drops);
	}
}
