/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.resolve;

import java.util.List;
import java.util.Optional;

import hullwright.spec.Named;

/**
 * What copying a series out of EMF needs throughout.
 *
 * @param parts the parts of the catalogs, each copied once
 * @param names the qualified names
 * @param places where things stand in the text
 */
record Copying(CatalogParts parts, NamesInText names, TextPlaces places) {

	static String text(String text) {
		return text == null ? "" : text;
	}

	static Optional<String> name(Named named) {
		return Optional.ofNullable(named).map(Named::getName);
	}

	static List<String> names(List<? extends Named> named) {
		return named.stream().map(Named::getName).toList();
	}
}
