/*
 * SPDX-FileCopyrightText: Hullwright contributors
 * SPDX-License-Identifier: EPL-2.0
 */
package hullwright.network.part;

import java.util.Optional;

/**
 * What every part has: where it is found, what it is called, how it is bought and where it may be fitted.
 *
 * @param catalog the catalog it is in
 * @param name its name there
 * @param title what people call it, empty if the name says enough
 * @param article its article number, empty if it has none
 * @param source where its values were read, empty if the catalog does not say
 * @param successor the part that is bought in its place, as catalog and name
 * @param suitability where it may be fitted
 */
public record PartIdentity(String catalog, String name, String title, String article, String source,
		Optional<String> successor, Suitability suitability) {

	/** A part of which the catalog says no more than what it is called. */
	public static PartIdentity named(String catalog, String name) {
		return new PartIdentity(catalog, name, "", "", "", Optional.empty(), Suitability.UNSTATED);
	}
}
