/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.lang.edit;

import hullwright.spec.DataNetwork;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;

/**
 * Writes what hangs on a backbone, as the last line of its network.
 */
public final class NetworkText {

	private final PartNames parts;

	/** Edits of networks in a text that was parsed without errors. */
	public NetworkText(PartNames parts) {
		this.parts = parts;
	}

	/** A cap on a port. */
	public Optional<TextEdit> cap(DataNetwork network, String port, String catalog, String cap, String condition) {
		return add(network, "cap " + port + " with " + parts.at(network, catalog, cap), condition);
	}

	/** A feed through a port. */
	public Optional<TextEdit> feed(DataNetwork network, String port, String catalog, String cord, String supply, String condition) {
		return add(network, "feed " + port + " via " + parts.at(network, catalog, cord) + " from " + supply, condition);
	}

	/** A device on a drop of so much of the network's cable; none for a device that brings its lead. */
	public Optional<TextEdit> drop(DataNetwork network, String port, Optional<String> cable, String wishedName, String catalog, String device, String condition) {
		return add(network, "drop " + port + cable.map(length -> " via " + length).orElse("") + " to " + FreeNames.like(wishedName, network) + " : "
				+ parts.at(network, catalog, device), condition);
	}

	private static Optional<TextEdit> add(DataNetwork network, String statement, String condition) {
		List<EObject> inside = List.copyOf(network.eContents());
		return BlockBraces.close(network).map(close -> new TextLines(network)
				.beforeBrace(close, inside.isEmpty() ? null : inside.get(inside.size() - 1), statement + (condition.isEmpty() ? "" : " when " + condition)));
	}
}
